/** The worked lines of the sums about bit rates, and the words that ask for their inputs. */
export const BANDWIDTH_WORDS = {
  'bandwidth.title': 'Does the picture fit through the line?',

  'bandwidth.ask-stream': 'Which stream does the phone show?',
  'bandwidth.stream-main': 'The main stream (full picture)',
  'bandwidth.stream-sub': 'The sub stream (small picture)',
  'bandwidth.ask-main': 'Bit rate of the main stream, from the video settings, such as 4 Mbit/s',
  'bandwidth.ask-sub': 'Bit rate of the sub stream, such as 512 kbit/s',
  'bandwidth.ask-upload': 'Upload rate of the site, measured there, such as 10 Mbit/s',
  'bandwidth.ask-download': 'Download rate of the phone, measured where it shows no picture',
  'bandwidth.ask-cameras': 'How many cameras are watched at once?',
  'bandwidth.ask-viewers': 'How many phones and screens watch at once?',
  'bandwidth.ask-copies': 'Is the picture sent once for each viewer, or once to a service that hands it on?',
  'bandwidth.copies-each': 'Once for each viewer',
  'bandwidth.copies-once': 'Once, to a service that hands it on',
  'bandwidth.ask-hours': 'How many hours a day is it watched over mobile data?',

  'bandwidth.rate-too-low':
    'A stream or a line carries at least {least}. Read the number and its unit again.',

  'bandwidth.rate-main': 'The main stream takes {rate}.',
  'bandwidth.rate-sub': 'The sub stream takes {rate}.',
  'bandwidth.rate-guessed': 'The bit rate is not known: {rate} is what cameras usually send (judged).',
  'bandwidth.sent-each':
    'Cameras, viewers and bit rate: {cameras} × {viewers} × {rate} = {need}, counted once for each viewer.',
  'bandwidth.sent-once':
    'Cameras and bit rate: {cameras} × {rate} = {need}. The service hands it on, so viewers do not count.',
  'bandwidth.upload-usable':
    'Of the upload rate, {upload}, 80 % may be planned with: {usable} (planning practice, from memory).',
  'bandwidth.download-usable':
    'Of the download rate of the phone, {download}, 80 % may be planned with: {usable} (planning practice, from memory).',
  'bandwidth.upload-fits': 'It fits through the upload of the site.',
  'bandwidth.upload-may-fit': 'Whether it fits through the upload of the site is not certain.',
  'bandwidth.upload-too-much': 'It does not fit through the upload of the site.',
  'bandwidth.received': 'The phone receives cameras and bit rate: {cameras} × {rate} = {need}.',
  'bandwidth.download-fits': 'It fits through the download of the phone.',
  'bandwidth.download-may-fit': 'Whether it fits through the download of the phone is not certain.',
  'bandwidth.download-too-much': 'It does not fit through the download of the phone.',
  'bandwidth.viewers-none': 'Not even one can watch.',
  'bandwidth.viewers-fit': 'At most {viewers} can watch at once.',
  'bandwidth.viewers-fit-range': 'Between {low} and {high} can watch at once.',
  'bandwidth.data-hour': 'An hour of watching is {amount} of mobile data (1 Mbit/s is 0.45 GB an hour).',
  'bandwidth.data-month': '{hours} h a day for {days} days is {amount} a month.',
  'bandwidth.use-main': 'The main stream fits.',
  'bandwidth.use-sub': 'Only the sub stream is certain to fit. Choose it on the phone.',
  'bandwidth.use-neither':
    'Neither stream is certain to fit. Lower the bit rate in the camera, or let fewer watch at once.',
} as const;
