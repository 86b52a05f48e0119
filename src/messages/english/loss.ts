/** The worked lines of the sums about lost and late packets, and the words that ask for their inputs. */
export const LOSS_WORDS = {
  'loss.title': 'What do lost and late packets say?',

  'loss.ask-sent': 'How many packets were sent?',
  'loss.ask-received': 'How many answers came back from the camera itself?',
  'loss.ask-runs': 'How many were lost in a row each time, such as 1, 1, 3?',
  'loss.ask-shortest': 'Shortest round trip, such as 2 ms',
  'loss.ask-mean': 'Mean round trip',
  'loss.ask-longest': 'Longest round trip',
  'loss.ask-duplicates': 'How many answers came twice?',
  'loss.ask-way': 'Is any part of the way wireless?',
  'loss.way-wireless': 'Yes, some of it',
  'loss.way-cable-only': 'No, cable all the way',
  'loss.way-dont-know': "Don't know",
  'loss.ask-rate': 'Bit rate of the stream, such as 2 Mbit/s',
  'loss.ask-frames': 'Frames a second of the stream',
  'loss.more-than-sent':
    '{received} answers cannot come from {sent} packets. Count answers that came twice once.',
  'loss.runs-unclear': '"{text}" cannot be read as numbers of lost packets. Type them like 1, 1, 3.',
  'loss.runs-disagree': 'The gaps add up to {sum}, but {lost} were lost. Count again.',
  'loss.times-disagree':
    'The shortest round trip cannot be above the mean, nor the mean above the longest. Read them again.',
  'loss.rate-too-low': 'A stream takes at least {least}. Read the number and its unit again.',

  'loss.interval':
    '{lost} of {sent} were lost. By these alone that is {share}, but the loss on the way may lie anywhere in {range} (95 % confidence; Wilson 1927).',
  'loss.nothing-back':
    'None of {sent} came back. That is no loss on the way: the camera cannot be reached, or does not answer.',
  'loss.good': 'At most {good} is lost: good enough for a picture (judged).',
  'loss.bad': 'More than {bad} is lost: no picture holds with that (judged).',
  'loss.more-pings':
    'That does not yet tell which of these it is: good ({good} at most), middling, or bad (over {bad}; all judged). Send more: {packets} without a loss would show that it is good.',
  'loss.middling':
    'More than {good} and at most {bad} is lost: the picture comes, but it stutters or breaks up (judged).',
  'loss.who-replied':
    'Count only answers from the address of the camera. Some systems count an error reply from another device as received.',

  'loss.judged': 'What the numbers go with is judged from how gaps and times lie. It proves nothing yet.',
  'loss.wireless-fits':
    'A wireless hop: goes well with it. Most answers are quick, a few come late, some not at all.',
  'loss.wireless-could': 'A wireless hop: could be.',
  'loss.wireless-against': 'A wireless hop: unlikely. The times are too even, or the way is all cable.',
  'loss.cable-fits':
    'A bad cable or plug: goes well with it. Some packets are lost, and the rest are quick and even.',
  'loss.cable-could': 'A bad cable or plug: could be. Look at the error counters of the switch port.',
  'loss.cable-against': 'A bad cable or plug: unlikely. A cable loses packets, it does not hold them back.',
  'loss.congestion-fits':
    'A full line: goes well with it. All answers come late, as if they stood in a queue.',
  'loss.congestion-could': 'A full line: could be. Ping again with the picture off.',
  'loss.congestion-against': 'A full line: unlikely. Nothing stands in a queue.',
  'loss.same-address-fits': 'Two devices with one address: goes well with it. Some answers came twice.',
  'loss.same-address-could':
    'Two devices with one address: could be. Unplug the camera and ping again: an answer would prove it.',
  'loss.same-address-against': 'Two devices with one address: unlikely from these numbers.',

  'loss.frames-hit':
    'At {rate} and {frames} frames a second a frame takes about {packets} packets. Sent over UDP, {share} of the frames lose one, if losses fall by chance.',
  'loss.tcp-too-slow':
    'Sent over TCP, at the upper end of that loss a stream reaches no more than {ceiling} (Mathis and others 1997): too slow for {rate}, so the picture stalls.',
  'loss.tcp-enough':
    'Sent over TCP, a stream reaches up to {ceiling} even at the upper end of that loss (Mathis and others 1997): enough for {rate}, with delay.',
  'loss.delay':
    'The picture comes at least {delay} late for the way alone. Half a second is felt when a camera is steered, and in talking back sooner.',
} as const;
