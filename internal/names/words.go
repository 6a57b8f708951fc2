package names

// The two lists of spoken tags are our own. Each word is short, known to a
// child of nine, no plant, no colour a label could be mistaken about, and told
// from its neighbours by ear: words of one list differ in their first sound
// and vowel, or by three letters at least (words_test.go). 64 each, so that a
// tag carries six bits a word.
const firstWords = `able amber blunt bold brisk brown calm chalky civil clever cosy crisp
deep dusty eager early even fair fancy firm foggy fresh gentle giant
glad golden grand happy hasty hollow humble icy jolly nifty kind lazy
little lucky merry mellow misty modest nimble noble odd plain polite proud
quick quaint rapid rough rugged shy silent sleepy smooth snowy solid steady
sturdy tall tiny velvet`

const secondWords = `anchor anvil badger barrel beaver bison bagpipe bridge bucket candle canoe cobbler
compass cricket dolphin dragon drummer eagle falcon ferry fiddle gander goblin hammer
hedgehog heron jackdaw kettle kayak ladder lantern lizard magpie meadow mitten monkey
nickel oyster otter owl panther parrot pebble pigeon pillow puffin rabbit raven
robin saddle sailor salmon shepherd sparrow spider teapot thimble tiger trumpet tunnel
turtle walrus weasel zebra`
