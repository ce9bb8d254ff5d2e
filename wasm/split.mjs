/** Splits the pinned single-file OpenCV package into wasm/build/opencv.wasm (so that it can be
 *  compiled while it arrives) and wasm/build/opencv.js (its glue, without eval, so that it runs
 *  under a Content Security Policy of 'wasm-unsafe-eval' alone). Plain node, no dependencies:
 *  npm runs it after every install, and `node wasm/split.mjs` repeats it by hand. */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const packageFile = 'node_modules/@opencvjs/web/lib/opencv_js.js';
const sha256 = {
  package: '5966211e252e27f9f98094642cc0a58308984dd5f8a8cf059186ca4bcc9140d1',
  wasm: '1a4c23c3e05905ba927facc29500d297f1c45c72ebf72a22908bed76b8b7bc4b',
  glue: '1dde45663ca38e613644ae98f5957b6a0d8d577004353c2cb23ec6403d7f4d3e',
};

const root = new URL('../', import.meta.url);
const buildDir = new URL('wasm/build/', root);
export const wasmFile = new URL('opencv.wasm', buildDir);
export const glueFile = new URL('opencv.js', buildDir);

const base64Start = '"data:application/octet-stream;base64,AGFzbQ';

/** Embind writes an invoker's source as text and evaluates it; these closures do the same work.
 *  After emscripten's own variant for DYNAMIC_EXECUTION=0, but with arrays of their own per call. */
const withoutEval = [
  [
    'let[args,invokerFnBody]=createJsInvoker(argTypes,isClassMethodFunc,returns,isAsync);args.push(invokerFnBody);var invokerFn=newFunc(Function,args)(...closureArgs);',
    `var invokerFn=function(...args){
      var destructors=needsDestructorStack?[]:null;
      var wired=[cppTargetFunc];
      if(isClassMethodFunc)wired.push(argTypes[1]["toWireType"](destructors,this));
      for(var i=2;i<argTypes.length;++i)wired.push(argTypes[i]["toWireType"](destructors,args[i-2]));
      var rv=cppInvokerFunc(...wired);
      if(needsDestructorStack){runDestructors(destructors)}
      else{
        var first=isClassMethodFunc?1:2;
        for(var i=first;i<argTypes.length;++i){
          if(argTypes[i].destructorFunction!==null)argTypes[i].destructorFunction(wired[i-first+1]);
        }
      }
      if(returns)return argTypes[0]["fromWireType"](rv);
    };`,
  ],
  [
    'var invokerFunction=newFunc(Function,params)(...args);',
    `var invokerFunction=(obj,func,destructorsRef,pointer)=>{
      var values=[];
      for(var i=0;i<argCount;++i){
        values.push(types[i].readValueFromPointer(pointer));
        pointer+=types[i].argPackAdvance;
      }
      var rv=kind===1?reflectConstruct(func,values):func.apply(kind===0?obj:undefined,values);
      if(!retType.isVoid)return emval_returnValue(retType,destructorsRef,rv);
    };`,
  ],
];

/** Writes both files unless they are already there with the right sums. */
export function ensureOpenCv() {
  if (hasSum(wasmFile, sha256.wasm) && hasSum(glueFile, sha256.glue)) return;
  const source = readFileSync(new URL(packageFile, root));
  demand('the package file', source, sha256.package);
  const { wasm, glue } = split(source.toString('latin1'));
  demand('opencv.wasm', wasm, sha256.wasm);
  demand('opencv.js', glue, sha256.glue);
  mkdirSync(buildDir, { recursive: true });
  writeWhole(wasmFile, wasm);
  writeWhole(glueFile, glue);
}

function split(source) {
  const start = source.indexOf(base64Start);
  const end = source.indexOf('"', start + 1);
  if (start < 0 || end < 0) throw new Error(`no embedded wasm in ${packageFile}`);
  const literal = source.slice(start, end + 1);
  const wasm = Buffer.from(literal.slice(literal.indexOf(',') + 1, -1), 'base64');
  let glue = `${source.slice(0, start)}"opencv.wasm"${source.slice(end + 1)}`;
  for (const [before, after] of withoutEval) {
    if (glue.split(before).length !== 2) throw new Error('the glue is not the one we know');
    glue = glue.replace(before, () => after);
  }
  return { wasm, glue: Buffer.from(glue, 'latin1') };
}

/** By way of a rename, so that a reader in another process never sees half a file. */
function writeWhole(file, bytes) {
  const partial = new URL(`${file.href}.${process.pid}`);
  writeFileSync(partial, bytes);
  renameSync(partial, file);
}

function hasSum(file, sum) {
  return existsSync(file) && sumOf(readFileSync(file)) === sum;
}

function sumOf(bytes) {
  return createHash('sha256').update(bytes).digest('hex');
}

function demand(name, bytes, sum) {
  const found = sumOf(bytes);
  if (found !== sum) throw new Error(`${name}: SHA-256 is ${found}, expected ${sum}`);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) ensureOpenCv();
