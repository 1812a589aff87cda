'use strict';
// What an editor shows of a file, asked of vscode-json-languageservice (npm). Standard input: {"schema": text, "asks":
// [{"text": of the file, "at": offset}]}; standard output: for each ask what is wrong in the file, and what is completed
// and explained at that place.
const {getLanguageService, TextDocument} = require('vscode-json-languageservice');

async function answer(schema, ask) {
  const service = getLanguageService({
    schemaRequestService: (uri) => uri.endsWith('/schema.json') ? Promise.resolve(schema) : Promise.reject('no ' + uri),
    workspaceContext: {resolveRelativePath: (path, base) => new URL(path, base).toString()},
  });
  const document = TextDocument.create('file:///garden/show.json', 'json', 1, ask.text);
  const json = service.parseJSONDocument(document);
  const faults = await service.doValidation(document, json);
  const place = document.positionAt(ask.at);
  const completed = await service.doComplete(document, place, json);
  const hover = await service.doHover(document, place, json);
  return {
    faults: faults.map((fault) => document.offsetAt(fault.range.start) + ': ' + fault.message),
    completed: completed ? completed.items.map((item) => item.label) : [],
    explained: hover ? hover.contents.map((part) => part.value || part).join('\n') : '',
  };
}

(async () => {
  const {schema, asks} = JSON.parse(require('fs').readFileSync(0, 'utf8'));
  const answers = [];
  for (const ask of asks) {
    answers.push(await answer(schema, ask));
  }
  process.stdout.write(JSON.stringify(answers));
})();
