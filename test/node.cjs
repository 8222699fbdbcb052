// Refuses a Node that is too old in one line. Plain old JavaScript, so that an old Node can read it.
var have = process.versions.node.split('.').map(Number)
if (have[0] < 20 || (have[0] === 20 && have[1] < 19)) {
  console.error('Dutywright needs Node 20.19 or later; this is Node', process.versions.node)
  process.exit(1)
}
