import { type Color, ShaderMaterial } from 'three';

/**
 * Card with inked edges, for instances of a unit box whose +z side is the face. Light falls softly from above and the
 * side; a back is a shade darker than a face. Edges keep their width in pixels and fade where cards become too small to
 * tell apart, so that a far wall does not shimmer. `card`: the colour where instances have none of their own.
 * `pen`: how much wider than on a screen an edge is drawn.
 */
export function cardMaterial(ink: Color, card?: Color): ShaderMaterial {
  return new ShaderMaterial({
    // A hair behind the ink lines that run along its edges.
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 2,
    uniforms: { ink: { value: ink }, card: { value: card ?? ink }, pen: { value: 1 } },
    vertexShader: /* glsl */ `
      uniform vec3 card;
      varying vec2 vUv;
      varying vec3 vColour;
      varying float vLight;
      void main() {
        vUv = uv;
        #ifdef USE_INSTANCING_COLOR
          vColour = instanceColor;
        #else
          vColour = card;
        #endif
        vec3 side = normalize(mat3(modelMatrix) * mat3(instanceMatrix) * normal);
        float fall = dot(side, normalize(vec3(0.35, 0.8, 0.5)));
        float back = normal.z > 0.5 ? 1.0 : 0.9;
        vLight = back * (0.86 + 0.14 * fall);
        gl_Position = projectionMatrix * modelViewMatrix * instanceMatrix * vec4(position, 1.0);
      }`,
    fragmentShader: /* glsl */ `
      uniform vec3 ink;
      uniform float pen;
      varying vec2 vUv;
      varying vec3 vColour;
      varying float vLight;
      void main() {
        vec2 step = max(fwidth(vUv), vec2(1e-6)) * pen;
        vec2 near = min(vUv, 1.0 - vUv) / step;
        vec2 line = 1.0 - smoothstep(vec2(0.35), vec2(1.15), near);
        line *= smoothstep(vec2(3.0), vec2(12.0), 1.0 / step);
        vec3 colour = mix(vColour * vLight, ink, 0.62 * max(line.x, line.y));
        gl_FragColor = vec4(colour, 1.0);
        #include <colorspace_fragment>
      }`,
  });
}
