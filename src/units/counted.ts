/** A count with its noun: '1 column', '8 columns', '0 columns'. `many` where an s does not make the plural. */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
