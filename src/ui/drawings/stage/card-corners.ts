/** The eight corners of each card, x, y, z in metres of the scene. `cards`: matrices of unit cards, 16 numbers each. */
export function cardCorners(cards: Float32Array): Float32Array {
  const corners = new Float32Array((cards.length / 16) * 24);
  let at = 0;
  for (let card = 0; card < cards.length; card += 16) {
    for (const x of [-0.5, 0.5]) {
      for (const y of [-0.5, 0.5]) {
        for (const z of [-1, 0]) {
          for (const axis of [0, 1, 2]) {
            const moved = cards[card + axis]! * x + cards[card + 4 + axis]! * y + cards[card + 8 + axis]! * z;
            corners[at++] = moved + cards[card + 12 + axis]!;
          }
        }
      }
    }
  }
  return corners;
}
