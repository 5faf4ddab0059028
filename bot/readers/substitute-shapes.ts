/**
 * Shapes of what is said about replacing something, over the signs of a message: `i` a name, `R` a recipe, `s` swap,
 * `r` replace, `u` substitute, `a` alternative, `d` instead of, `D` instead, `L` take or leave, `M` remove, `P` put or
 * use, `O` out, `N` no, `X` without, `f` for, `b` by, `T` to, `W` with or from, `I` in, `o` of, `A` and, `#` an amount,
 * `w` a word nobody knows, `n` cannot or don't have, `x` not, `B` becomes, `h` have, `k` only. The groups say what each name is.
 */

/** "… in Fernlea hand balm …" between the two names. */
const place = '(?:[Io]R)?';

/** No amount before it: it is no line of a written-out recipe. */
const bare = '(?<!#o?)';

/**
 * Which goes out and which comes in, most telling shapes first. "Swap A for B" and "replace A with B" take A out;
 * "substitute B for A", "B instead of A" and "swap in B for A" take A out as well.
 */
export const shapes: readonly RegExp[] = [
  /[sru]O?#o?(?<part>i)/d, // swap half the beeswax
  /sI(?<to>i)f(?<from>i)/d, // swap in B for A
  /sT(?<to>i)W(?<from>i)/d, // switch to B from A
  new RegExp(`sO?W?(?<from>i)O?${place}[fWTb>]+I?(?<to>i)`, 'd'), // swap A for B, switch from A to B
  new RegExp(`rO?(?<from>i)${place}(?:[Wbf>]+I?|I(?!i#))(?<to>i)`, 'd'), // replace A with B
  /[sr]O?(?<from>i)I(?<lines>(?:#o?i[,A]*)+)[fWTb](?<to>i)(?!#)/d, // swap A in 20% A, 80% oil for B
  /[PW](?<to>i),?A?x(?<from>i)/d, // use B and not A
  new RegExp(`u(?<from>i)${place}[Wb](?<to>i)`, 'd'), // substitute A with B
  new RegExp(`u(?<to2>i)${place}f(?<from2>i)`, 'd'), // substitute B for A
  new RegExp(`(?<from>i)${place}[?,]{0,2}(?:s[fWbT]|u[Wb])(?<to>i)`, 'd'), // with A swapped for B
  new RegExp(`(?<from>i)${place}[?,]{0,2}r[Wb](?<to>i)`, 'd'), // A replaced with B
  /(?:Oo|[Nn]\??)(?<from>i)[^i#]{0,4}h[^i#]{0,3}(?<to>i)(?!#)/d, // no A, but we have plenty of B
  /[hW][^i#]{0,2}(?<to>i)[^i#,]{0,3}N(?<from>i)(?!#)/d, // I have B but no A
  /k(?<to>i)[^i#]{0,14}(?<from>i)(?:[Io]R)?[^i#]{0,3}[sru]/d, // only B left. Can the A be swapped for it
  /(?<from>i)[^i#]{0,6}k(?<to>i)(?![,A]+i)/d, // it calls for A, I have only B
  new RegExp(`${bare}(?<to>i)[IT]{0,2}r(?<from>i)`, 'd'), // can B replace A
  new RegExp(`${bare}(?<to>i)I?[ua]I?[fTo](?<from>i)`, 'd'), // B as a substitute for A
  new RegExp(`${bare}(?<to>i)[^i#,]{0,6}d(?<from>i)`, 'd'), // B instead of A
  /d(?<from>i),?[PW]{0,2}(?<to>i)/d, // instead of A use B
  new RegExp(`${bare}(?<from>i)>(?<to>i)`, 'd'), // A -> B
  /[LM]O?(?<from>i)O?[^i#]{0,4}[PW]I?(?<to>i)/d, // take out A and put in B
  /P(?<to>i)I?f(?<from>i)/d, // put B in for A
  /(?:Oo|[Nn])(?<from>i)[^i#]{0,8}(?:P|k|wf)A?(?<to>i)(?!#)/d, // out of A, can I use B; no A, only B
  /[Nn](?<from>i)[^i#A]{0,4}[.;!][^i#A]{0,4}(?<to>i)(?=[^i#]{0,6}R)/d, // no A left. Would B do for …
  new RegExp(`${bare}(?<from>i)T(?<to>i)(?=I[#R])`, 'd'), // A to B in …
  new RegExp(`${bare}(?<from>i)${place}w?B(?<to>i)`, 'd'), // the A becomes B
  new RegExp(`${bare}(?<from>i)O,?A?(?<to>i)I`, 'd'), // A out, B in
  new RegExp(`${bare}(?<to>i),?A?x(?<from>i)`, 'd'), // B, not A
  new RegExp(`sO?${bare}(?<gone>i)O`, 'd'), // swap the A out
  /[sr]O?i[fWTb]+(?<strange>w+i?)/d,
  /ui[Wb](?<strange>w+i?)/d,
  /(?<strange>w+i?)d(?:i|$)/d,
  /[ua]I?[fTo]+(?<what>i)/d, // alternatives to A, a substitute for A
  /sf(?<open>i)/d, // what can I swap for A; swap it for B
  /[sr][WTb](?<lone>i)/d, // replace it with B
  /[ru]O?(?<what>i)/d, // what can replace A
  /sO?(?<what>i)/d, // what can I swap A for
  /(?<what>i)[rau]/d, // what can A be replaced with; a beeswax alternative
  /d(?<what>i)/d, // what can I use instead of A
  /Oo(?<out>i)/d, // we are out of A
  /(?<lack3>i)l/d, // the A has gone off, what else works
  /(?<kind>i)P(?=I?R)/d, // is there a vegan wax I could use in …
  /N(?<lack>i)/d, // no A left, what else works
  /n[?h]?(?<lack2>i)/d, // we can't get A, don't have A
  /[ru](?<strange>w+i?)/d,
  /[ua]I?[fTo](?<strange>w+i?)/d,
  /d(?<strange>w+i?)/d,
  /M(?<gone>i)|LO(?<gone2>i)|L(?<gone3>i)O/d, // leave out A
  new RegExp(`${bare}(?<lone>i)D|D[PW]?(?<lone2>i)`, 'd'), // B instead
  /k(?<lone3>i)(?![,A]+i)/d, // I can only get B
  /(?<!#o?)(?<from>i)IR(?<to>i)(?!#)/d, // can the A in … be B
  new RegExp(`${bare}(?<to2>i)f(?<from2>i)(?!#)`, 'd'), // B for A
];

/** "… and shea for mango": a second swap after a first one. */
export const furtherShapes: readonly RegExp[] = [/[A,]+(?<from>i)[fWTb>](?<to>i)/d, ...shapes];
