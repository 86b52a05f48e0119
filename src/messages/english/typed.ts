/** What is said when typed text cannot be used as it stands. */
export const TYPED_WORDS = {
  'typed.empty': 'Nothing was typed. Type the answer, or choose "can\'t tell".',
  'typed.too-long': '"{text}" goes on for too long. Type at most {most} characters.',

  'typed.address-few':
    '"{text}" has only {count} of the four numbers of an address. Type all four with dots between them, such as 172.23.40.57.',
  'typed.address-many':
    '"{text}" has {count} numbers. An address has four, with dots between them, such as 172.23.40.57.',
  'typed.address-letters':
    '"{text}" has the letter {letter} in it. Type the address as four numbers with dots between them, such as 172.23.40.57.',
  'typed.address-with-mask':
    '"{text}" is an address and a mask together. Type only the address here: {address}.',
  'typed.address-with-port':
    '"{text}" is an address and a port together. Type only what stands before the colon: {address}.',
  'typed.mask-as-address':
    '"{text}" looks like a subnet mask. Type the address instead: four numbers with dots between them, such as 172.23.40.57.',
  'typed.web-address':
    '"{text}" is a web address. Type only the four numbers with dots between them, such as 172.23.40.57.',
  'typed.ipv6':
    '"{text}" looks like an IPv6 address. The IPv4 address is needed here: four numbers with dots between them, such as 172.23.40.57.',
  'typed.mac':
    '"{text}" looks like a hardware address (MAC). The IP address is needed here: four numbers with dots between them, such as 172.23.40.57.',

  'typed.mask-few':
    '"{text}" has only {count} of the four numbers of a mask. Type all four with dots between them, such as 255.255.255.0, or a slash and one number, such as /24.',
  'typed.mask-many':
    '"{text}" has {count} numbers. A mask has four, such as 255.255.255.0, or is a slash and one number, such as /24.',
  'typed.mask-letters':
    '"{text}" has the letter {letter} in it. Type the mask as four numbers, such as 255.255.255.0, or as a slash and one number, such as /24.',
  'typed.mask-with-address': '"{text}" is more than a mask. Type only the mask here: {mask}.',
  'typed.mask-missing':
    '"{text}" has no mask. Type the address, a slash and the mask, such as 172.23.40.57/24.',
  'typed.address-as-mask':
    '"{text}" looks like an address. Type the subnet mask instead, such as 255.255.255.0 or /24.',
  'typed.mask-inverted': '"{text}" is a mask turned inside out. Type it the other way round: {mask}.',
  'typed.mask-number':
    'In "{text}" number {position} is {number}, which cannot stand in a mask. It must be one of 255, 254, 252, 248, 240, 224, 192, 128 or 0. Read the mask again.',
  'typed.mask-order':
    '"{text}" cannot be a mask. After the first number below 255 only 0 may follow, as in 255.255.254.0. Read the mask again.',
  'typed.prefix-too-big':
    'The mask /{number} is too big. The number after the slash is 0 to 32, such as /24.',
  'typed.prefix-leading-zero': 'The mask /{number} begins with a nought. Write /{plain} instead.',

  'typed.octet-too-big':
    'In "{text}" number {position} is {number}. None of the four numbers can be over 255. Read that number again.',
  'typed.leading-zero':
    'In "{text}" number {position} is written {number}. Some programs take a nought in front for another way of counting. Write {plain} instead.',
  'typed.gap':
    'In "{text}" a number is missing beside a dot. Type all four numbers with one dot between each two.',
  'typed.space-inside':
    'In "{text}" a space stands where a dot should be, or inside a number. Type four numbers with one dot between each two, and no spaces.',
  'typed.letter-for-digit': '"{text}" has the letter {letter} in it. Type the digit {digit} in its place.',
  'typed.stray': '"{text}" has the character {character} in it. Type only digits and dots.',

  'typed.number-unclear':
    '"{text}" cannot be read as one number. Type one number in {unit}, from {min} to {max}.',
  'typed.number-unclear-plain': '"{text}" cannot be read as one number. Type one number from {min} to {max}.',
  'typed.number-outside':
    '"{text}" is outside what can be right here. Type a number in {unit} from {min} to {max}.',
  'typed.number-outside-plain':
    '"{text}" is outside what can be right here. Type a number from {min} to {max}.',
  'typed.number-two-readings':
    '"{text}" can be read in two ways. Type {whole} for the larger number, or {small} for the smaller one.',
  'typed.unit-other': '"{text}" ends in {typed}, but the unit here is {unit}. Type the number in {unit}.',
  'typed.unit-needless': '"{text}" has {typed} after the number. Type only the number, from {min} to {max}.',
} as const;
