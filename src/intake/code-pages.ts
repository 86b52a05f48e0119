/** The upper halves of the code pages that Windows in western Europe writes its console and its texts in. */
export type CodePage = '850' | '1252';

/** As the Unicode consortium maps them (MAPPINGS/VENDORS/MICSFT); holes of 1252 stand for themselves. */
const UPPER: Readonly<Record<CodePage, string>> = {
  '850':
    'ÇüéâäàåçêëèïîìÄÅÉæÆôöòûùÿÖÜø£Ø×ƒ' +
    'áíóúñÑªº¿®¬½¼¡«»░▒▓│┤ÁÂÀ©╣║╗╝¢¥┐' +
    '└┴┬├─┼ãÃ╚╔╩╦╠═╬¤ðÐÊËÈıÍÎÏ┘┌█▄¦Ì▀' +
    'ÓßÔÒõÕµþÞÚÛÙýÝ¯´\u00ad±‗¾¶§÷¸°¨·¹³²■\u00a0',
  '1252':
    '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ' +
    Array.from({ length: 96 }, (_, place) => String.fromCharCode(0xa0 + place)).join(''),
};

const BYTES: Readonly<Record<CodePage, ReadonlyMap<string, number>>> = {
  '850': byteOf('850'),
  '1252': byteOf('1252'),
};

/** The character of a byte. */
export function characterOf(byte: number, page: CodePage): string {
  return byte < 0x80 ? String.fromCharCode(byte) : UPPER[page].charAt(byte - 0x80);
}

/** The byte that a character of the upper half is written as, if it has one. */
export function upperByteOf(character: string, page: CodePage): number | undefined {
  return BYTES[page].get(character);
}

function byteOf(page: CodePage): ReadonlyMap<string, number> {
  return new Map([...UPPER[page]].map((character, place) => [character, 0x80 + place]));
}
