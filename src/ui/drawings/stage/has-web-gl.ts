/** Whether this browser can draw in three dimensions at all. */
export function hasWebGl(): boolean {
  const gl = document.createElement('canvas').getContext('webgl2');
  // Browsers keep few contexts at a time: this one is given back at once.
  gl?.getExtension('WEBGL_lose_context')?.loseContext();
  return gl !== null;
}
