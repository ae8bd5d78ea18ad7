import { type Color, ShaderMaterial } from 'three';

/**
 * Matt paper with a grid of whole metres or feet that fades towards the edge of the sheet and where its lines would run
 * together. `cell`: metres of one square; every fifth line is stronger. `pen`: how
 * much wider than on a screen a line is drawn.
 */
export function floorMaterial(line: Color, cell: number, radius: number): ShaderMaterial {
  return new ShaderMaterial({
    transparent: true,
    depthWrite: false,
    uniforms: { line: { value: line }, cell: { value: cell }, radius: { value: radius }, pen: { value: 1 } },
    vertexShader: /* glsl */ `
      varying vec2 vPlace;
      varying vec2 vOut;
      void main() {
        vec4 place = modelMatrix * vec4(position, 1.0);
        vPlace = place.xz;
        vOut = position.xy;
        gl_Position = projectionMatrix * viewMatrix * place;
      }`,
    fragmentShader: /* glsl */ `
      uniform vec3 line;
      uniform float cell;
      uniform float radius;
      uniform float pen;
      varying vec2 vPlace;
      varying vec2 vOut;
      float grid(float size) {
        vec2 at = vPlace / size;
        vec2 width = fwidth(at) * pen;
        vec2 away = abs(fract(at - 0.5) - 0.5) / max(width, vec2(1e-6));
        vec2 drawn = (1.0 - smoothstep(vec2(0.3), vec2(1.1), away)) * (1.0 - smoothstep(vec2(0.08), vec2(0.3), width));
        return max(drawn.x, drawn.y);
      }
      void main() {
        float fade = 1.0 - smoothstep(0.35, 1.0, length(vOut) / radius);
        float strength = max(0.5 * grid(cell), 0.95 * grid(cell * 5.0));
        gl_FragColor = vec4(line, strength * fade);
        #include <colorspace_fragment>
      }`,
  });
}
