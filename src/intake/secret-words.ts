/**
 * What stands before something that must not be kept, one row a language: English, German, French, Spanish,
 * Portuguese, Italian, Dutch, Polish, Turkish, Russian, Chinese, Japanese. Hyphens and apostrophes count as blanks.
 */
export interface SecretWords {
  /** Passwords, keys, PINs, community strings: looked for anywhere. */
  readonly secrets: readonly string[];
  /** Names of people: looked for anywhere. */
  readonly users: readonly string[];
  /** Names of computers and of the networks they belong to: taken only where a colon or an equals sign follows. */
  readonly hosts: readonly string[];
}

export const SECRET_WORDS: SecretWords = {
  secrets: [
    'password, pass word, pass, passwd, key, passcode, passphrase, pass phrase, pwd, pw, psk, pre shared key, preshared key, pin',
    'pin code, pincode, wifi key, wi fi key, wlan key, wireless key, network key, security key, encryption key, wep key',
    'wpa key, wpa2 key, wpa3 key, wpa passphrase, key content, access key, secret, community, community string',
    'read community, write community, snmp community, authorization, verification code, api key, token',
    'passwort, kennwort, netzwerkschlüssel, wlan schlüssel, sicherheitsschlüssel, schlüsselinhalt, netzwerksicherheitsschlüssel',
    'mot de passe, mdp, clé wifi, clé wi fi, clé de sécurité, clé réseau, clé wpa, contenu de la clé, code pin, communauté',
    'contraseña, clave, clave wifi, clave de seguridad, clave de red, contenido de la clave, comunidad, código pin',
    'senha, palavra passe, chave de segurança, chave de rede, conteúdo da chave, comunidade',
    'parola d ordine, password wifi, chiave di sicurezza, chiave di rete, contenuto chiave, chiave wifi, comunità',
    'wachtwoord, wifi wachtwoord, netwerksleutel, beveiligingssleutel, sleutelinhoud, pincode',
    'hasło, hasło wifi, klucz zabezpieczeń, klucz sieciowy, klucz wifi, zawartość klucza, kod pin, społeczność',
    'şifre, parola, şifresi, parolası, ağ güvenlik anahtarı, anahtar içeriği, wifi şifresi, topluluk',
    'пароль, ключ безопасности, ключ сети, ключ wifi, ключ wi fi, содержимое ключа, пин, пин код, сообщество',
    '密码, 口令, 密钥, 网络安全密钥, 关键内容, 验证码, 團體名, 密碼, 团体名, 团体字',
    'パスワード, 暗証番号, 暗号化キー, セキュリティキー, ネットワークセキュリティキー, 主要なコンテンツ, コミュニティ名, コミュニティ',
  ],
  users: [
    'user name, username, user, login, login name, account, logged in as',
    'benutzername, benutzer, anmeldename, nom d utilisateur, utilisateur, identifiant',
    'nombre de usuario, usuario, nome de usuário, nome de utilizador, usuário, nome utente, utente',
    'gebruikersnaam, gebruiker, nazwa użytkownika, użytkownik, kullanıcı adı, kullanıcı',
    'имя пользователя, пользователь, логин, 用户名, 账号, 用户, 使用者名稱, ユーザー名, ユーザ名, ログイン名, アカウント',
  ],
  hosts: [
    'host name, hostname, static hostname, pretty hostname, computer name, computername, pc name, machine name',
    'dns suffix, dns suffix search list, primary dns suffix, dns domain, domain name, localhostname, csname',
    'connection specific dns suffix, dnsdomain, nis domain, workgroup, domain',
    'hostname, rechnername, dns suffix, primäres dns suffix, verbindungsspezifisches dns suffix, dns suffixsuchliste',
    'nom de l hôte, nom d hôte, nom de l ordinateur, suffixe dns, suffixe dns principal, suffixes dns',
    'suffixe dns propre à la connexion, liste de recherche du suffixe dns, liste de recherche de suffixes dns',
    'nombre de host, nombre del equipo, nombre de equipo, sufijo dns, sufijos dns, lista de búsqueda de sufijos dns',
    'sufijo dns específico para la conexión, nome do host, nome do computador, sufixo dns, sufixos dns',
    'nome host, nome computer, suffisso dns, suffissi dns, suffisso dns specifico per connessione',
    'hostnaam, computernaam, dns achtervoegsel, dns achtervoegsels, achtervoegsel, nazwa hosta, nazwa komputera',
    'sufiks dns, sufiks podstawowej domeny dns, sufiks dns konkretnego połączenia, lista przeszukiwania sufiksów dns',
    'ana bilgisayar adı, bilgisayar adı, dns soneki, birincil dns soneki, bağlantıya özgü dns soneki',
    'имя компьютера, имя узла, имя хоста, dns суффикс, основной dns суффикс, dns суффикс подключения',
    'порядок просмотра суффиксов dns, 主机名, 计算机名, 主 dns 后缀, dns 后缀, 后缀搜索列表, 连接特定的 dns 后缀',
    'ホスト名, コンピューター名, コンピュータ名, dns サフィックス, サフィックス検索一覧, 接続固有の dns サフィックス',
  ],
};

/** Between a secret and what it is, where no colon stands. */
export const SAYS: readonly string[] = [
  'is, was, ist, lautet, war, est, es, è, e, é, to, jest, это, 是, 为, は',
];

/** After these a word that follows a secret's name is no secret. */
export const SPEAKS_OF_IT: readonly string[] = [
  'wrong, correct, unknown, not, no, required, needed, protected, changed, the, a, on, off, set, empty, default, same',
  'for, from, of, in, and, or, to, is, was, has, with, at, but, falsch, richtig, unbekannt, nicht, kein, die, der',
  'incorrect, inconnu, pas, correcto, incorrecta, desconocida, errata, sconosciuta, onbekend, verkeerd, nieznane',
];
