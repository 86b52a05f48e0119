/** The help of each command: what it does, what it takes, an example that works. */
export const HELP_WORDS = {
  'help.call': `whydark call [--record FILE] [--site] [--rules DIR] [--unmasked]

Holds a call on this terminal: shows the words to say, takes the answers, and
writes the ticket to standard output when the call is closed. Every answer is
on the disk before the next step shows. Calls that were not closed are offered
first.

  --record FILE   keep this call in FILE, or go on with the call in it
  --site          the installer is on site: steps up a ladder are shown too
  --rules DIR     use the rule base in this folder
  --unmasked      leave serials and addresses legible in the ticket

Keys: a digit answers, a letter commands. Where text is typed, Esc opens the
commands.

Example: whydark call > ticket.md`,
  'help.diagnose': `whydark diagnose FILE [--json] [--site] [--rules DIR]

Diagnoses from a file of answers, without a person. FILE is JSON; - reads
standard input. null is "can't tell". "whydark questions" lists the ids.

  --json   the diagnosis as JSON (format 1, dist/schema/diagnosis.schema.json)
  --site   for the installer on site

Example: echo '{"answers":{"port-light":"all-dark"}}' | whydark diagnose -`,
  'help.questions': `whydark questions [--json] [--rules DIR]

Lists every question: its id, the words to say, and what it can be answered
with.

Example: whydark questions --json`,
  'help.read': `whydark read FILE [--json]

Says what is understood of a pasted text: the output of ipconfig, ping, arp and
their like on Windows, macOS and Linux, in any language, or the numbers of a
network page as somebody typed them. FILE may hold several, in any order, with
anything between them; - reads standard input. Passwords, keys, host and user
names are left out. In a call, p takes a text the same way and fills the answers
in.

  --json   as JSON (format 1), with what a question could read

Example: ip addr | whydark read -`,
  'help.here': `whydark here [--camera ADDRESS] [--router ADDRESS] [--name NAME]
             [--agree WORDS] [--json]

Reads the network of this computer, after asking and after showing what it would
run. With a second consent it tries the camera and the router, each once: ping,
the ports 80, 443 and 554, and a name. With a third it calls for cameras of the
ONVIF standard with one message, and listens for four seconds. Nobody else's
network is touched, and nothing leaves the local one. Says what is wrong with
this computer, and what to do next; a call can begin with what was read.

  --camera   the address of the camera, to try it
  --router   the address of the router; else the gateway of this computer
  --name     a name to look up, as of the service of the camera
  --agree    what is agreed to beforehand, without asking: read, try, search
  --json     as JSON (format 1); needs --agree where nobody can be asked

Example: whydark here --agree read,try --camera 172.23.40.21`,
  'help.replay': `whydark replay RECORD [--json] [--rules DIR]

Plays a call record again, step by step, and says where it ends. Changes
nothing. A record made with another rule base is played under this one, and what
moved is noted; under its own with --rules DIR.

Example: whydark replay transcripts-demo/02-lead-not-clicked-in/record.jsonl`,
  'help.ticket': `whydark ticket RECORD [--unmasked] [--rules DIR]

Writes the ticket of a call record, as markdown. Serial numbers, MAC and public
addresses, e-mail addresses, phone numbers and keys are masked.

  --unmasked   leave them legible

Example: whydark ticket transcripts-demo/02-lead-not-clicked-in/record.jsonl`,
  'help.rules': `whydark rules check [DIR ...] [--calls N] [--json]
whydark rules compare OLD NEW [RECORD ...] [--json]
whydark rules sources [DIR ...] [--json]

check names every fault of a rule base at once: file, place, what to write
instead; causes that nothing tells apart, too. DIR is "rules" where none is
given; further folders are additions to the first. Ends with status 1 where
there is an error.
compare says what changed from one rule base to another, record by record,
whether the version says so, and what each call record makes of both. Ends with
status 1 where the version says too little.
sources lists what the rule base rests on.

  --calls N   rehearse N calls, and name what was never asked and never tried

Example: whydark rules check rules`,
  'help.reckon': `whydark reckon TOPIC [--INPUT VALUE ...] [--json | --csv]

Does one sum and shows it line by line, with units and sources. What is not
given is asked for on a terminal. "whydark reckon" alone lists the topics.

  --csv   the table of an address plan, as comma-separated values

Example: whydark reckon subnet --address 172.23.40.21 --mask 255.255.255.0`,
  'help.article': `whydark article [NAME] [--html | --json]

Shows the article of a cause, or a how-to: what happens, how to be sure, how to
mend it by phone and on site. Without a name it lists them all.

  --html   the article as an HTML page
  --json   as JSON (format 1, dist/schema/article.schema.json; without a name
           dist/schema/articles.schema.json)

Example: whydark article patch-lead`,
} as const;
