/** English, German, French, Spanish, Portuguese, Italian, Dutch, Polish, Turkish, Russian, Chinese, Japanese; small letters. */
export const STATIC: ReadonlySet<string> = new Set(
  'static, statisch, statique, estático, estatico, statico, statyczne, statyczny, statik, статический, 静态, 静的'.split(
    ', ',
  ),
);

/** An entry that nobody answered. */
export const INVALID: ReadonlySet<string> = new Set(
  'invalid, incomplete, ungültig, non valide, no válido, inválido, non valido, ongeldig, nieprawidłowy, geçersiz, недопустимый, 无效, 無効'.split(
    ', ',
  ),
);
