/**
 * Passwords and password stems that are tried first everywhere, in lower case. A password is measured
 * against them as it is and without what people tack on (digits and signs at either end).
 */
const WORDS = `
password passwort passw0rd p@ssword p@ssw0rd pass pa55word motdepasse contrasena senha kennwort
qwerty qwertz azerty qwertyui qwertyuiop qwertzuiop azertyuiop asdf asdfgh asdfghjk asdfghjkl zxcv zxcvbn
zxcvbnm 1qaz2wsx qazwsx qazwsxedc 1q2w3e4r 1q2w3e4r5t q1w2e3r4 q1w2e3r4t5 zaq12wsx zaq1zaq1 qweasdzxc
abcdef abcdefg abcdefgh abc abcd abcabc aaaaaa admin administrator root user guest test testing tester
demo default changeme letmein welcome willkommen bienvenue login signin access secret hello hallo bonjour
iloveyou ichliebedich jetaime teamo loveyou lovely love sunshine princess princesa prinzessin princesse
monkey dragon master football baseball basketball soccer hockey tennis tenniscourt tennisclub tennisball
tennisplayer forehand backhand volley deuce advantage coach coaching coach-tennis trainer champion champions
courtloom academy matchpoint gameset gamesetmatch shadow superman batman spiderman starwars pokemon naruto
michael jennifer jessica ashley daniel thomas charlie andrew anthony jordan matthew joshua robert william
nicole michelle samantha alexander benjamin elizabeth christian christopher stephanie victoria
computer internet samsung google facebook whatever trustno freedom summer winter spring autumn sommer
january february march april june july august september october november december monday tuesday
wednesday thursday friday saturday sunday blink slipknot metallica nirvana corvette mustang ferrari porsche
mercedes yankees cowboys liverpool arsenal chelsea barcelona realmadrid juventus cheese chocolate cookie
banana orange purple flower butterfly rainbow diamond silver golden ginger pepper buster hunter killer
ranger tigger maggie cookie snoopy garfield harley dolphin panther eagle phoenix tiger lion angel angels
babygirl babyboy lovers forever friends family mother father mommy daddy jesus christ blessed heaven
blahblah asdasd asdasdasd qweqwe qweqweqwe zxczxc lalala hahaha nothing something anything everything
fuckyou fuckoff bullshit asshole whatsup qwer1234 asdf1234 abcd1234 abc12345 pass1234 test1234 admin123
a1b2c3d4 aa123456 a1234567 1234qwer 123qweasd 123abc 123qwe passpass opensesame letmeinnow iamthebest
correcthorse correcthorsebatterystaple
`;

export const COMMON_PASSWORDS: ReadonlySet<string> = new Set(WORDS.split(/\s+/).filter(Boolean));
