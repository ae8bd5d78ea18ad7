import { inflateRawSync } from 'node:zlib';

/** Text of one file inside a workbook, found by its name in the local headers. */
export function workbookPart(workbook: Buffer, name: string): string {
  for (let at = workbook.indexOf('PK\u0003\u0004'); at !== -1; at = workbook.indexOf('PK\u0003\u0004', at + 4)) {
    const nameLength = workbook.readUInt16LE(at + 26);
    const begin = at + 30 + nameLength + workbook.readUInt16LE(at + 28);
    const bytes = workbook.subarray(begin, begin + workbook.readUInt32LE(at + 18));
    if (workbook.toString('utf8', at + 30, at + 30 + nameLength) === name) {
      return (workbook.readUInt16LE(at + 8) === 8 ? inflateRawSync(bytes) : bytes).toString('utf8');
    }
  }
  throw new Error(`no part ${name}`);
}
