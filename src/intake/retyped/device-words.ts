import type { AdapterKind, Owner } from '../seen.js';

type Device = Exclude<Owner, 'unknown'>;
type Link = Extract<AdapterKind, 'lead' | 'wifi' | 'mobile' | 'vpn'>;

/** Whose numbers follow. Languages as in the words of the fields. */
export const DEVICE_WORDS: Readonly<Record<Device, readonly string[]>> = {
  camera: [
    'camera, cameras, cam, cams, ip camera, ip cameras, ip cam, ipcam, network camera, security camera',
    'kamera, kameras, ip kamera, ip kameras, netzwerkkamera, überwachungskamera',
    'caméra, caméras, cámara, cámaras, câmera, câmeras, câmara, câmaras',
    'telecamera, telecamere, videocamera, kamery, kameralar, kamerası',
    'камера, камеры, ip камера, ip камеры, ip видеокамера, видеокамера, видеокамеры',
    '摄像头, 摄像机, 网络摄像机, 网络摄像头, 相机, 攝影機, カメラ, ネットワークカメラ, ipカメラ, 監視カメラ, 防犯カメラ',
  ],
  phone: [
    'phone, phones, smartphone, mobile, mobile phone, cell, cell phone, cellphone, iphone, android, ipad, tablet',
    'handy, telefon, mobiltelefon, téléphone, portable, teléfono, móvil, celular, telefone, telemóvel',
    'telefono, cellulare, telefoon, mobieltje, telefon komórkowy, komórka, cep telefonu, akıllı telefon',
    'телефон, смартфон, мобильный, айфон, 手机, 电话, 手機, スマホ, スマートフォン, 携帯, 電話',
  ],
  computer: [
    'computer, pc, laptop, notebook, desktop, workstation, rechner, ordinateur, ordenador, computador, portátil',
    'computador portátil, komputer, bilgisayar, dizüstü, компьютер, ноутбук, комп, 电脑, 笔记本, 電腦, パソコン, ノートパソコン',
  ],
  router: [
    'router, routeur, roteador, enrutador, yönlendirici, маршрутизатор, роутер, 路由器, ルーター, ルータ, modem router',
  ],
};

/** What the device hangs on. */
export const LINK_WORDS: Readonly<Record<Link, readonly string[]>> = {
  wifi: [
    'wifi, wi fi, wlan, wireless, ssid, inalámbrico, bezprzewodowa, kablosuz, беспроводная, 无线, 無線, ワイヤレス',
  ],
  lead: ['lan, ethernet, cable, wired, kabel, kablo, кабель, 有线, 有線, lan port'],
  mobile: ['mobile data, cellular, lte, 4g, 5g, mobile daten, données mobiles, datos móviles, dati mobili'],
  vpn: ['vpn'],
};

/** Before the name that the device was given. */
export const NAME_WORDS: readonly string[] = [
  'name, device name, camera name, gerätename, kameraname, nom, nombre, nome, naam, nazwa, ad, adı, имя, название',
  '名称, 设备名称, 名字, 名前, デバイス名, 機器名, カメラ名, nom de la caméra, nombre de la cámara, nome da câmera',
];
