import { chromium } from '@playwright/test';
const base='http://localhost:4203/dist/';
const res=await fetch('http://localhost:4203/').then(r=>r.status).catch(e=>e.message); console.log(res);
const b=await chromium.launch({executablePath:'/usr/bin/chromium',args:['--no-sandbox','--disable-background-networking','--disable-quic','--no-first-run','--disable-component-update','--disable-sync']});
const which=process.argv.slice(2);
for (const [size,vp] of Object.entries({desk:{width:1280,height:800},phone:{width:390,height:844}})) for (const scheme of ['light','dark']) {
  const key=`${size}-${scheme}`; if (which.length && !which.some(w=>key.includes(w))) continue;
  const c=await b.newContext({viewport:vp,colorScheme:scheme,locale:'en-GB',reducedMotion:'reduce',deviceScaleFactor:1});
  const p=await c.newPage(); p.on('console',m=>m.type()==='error'&&console.log('console',m.text())); p.on('pageerror',e=>console.log('pageerror',e.message));
  await p.goto('http://localhost:4203/'); await p.locator('main h1').first().waitFor();
  const shot=(n)=>p.screenshot({path:`/tmp/wear3-shots/${key}-${n}.png`,fullPage:true});
  await shot('1start');
  await p.goto('http://localhost:4203/#/used'); await p.locator('.used').waitFor();
  await p.getByLabel('Thread it should have').fill('3/4-16unf'); await p.keyboard.press('Tab'); await p.waitForTimeout(300); await shot('2used');
  await p.locator('.used input[type=file]').nth(1).setInputFiles(process.env.PHOTO ?? '/work/shared/photos-wide/gw004.jpg');
  await p.locator('.wear, .refused').first().waitFor({timeout:90000}); await p.waitForTimeout(1200); await shot('3wear');
  if (await p.locator('.wear').count()) {
   await p.locator('[data-question=seal] input').nth(1).check(); await p.locator('[data-question=byHand] input').nth(2).check();
   await p.getByRole('textbox',{name:'Free end'}).fill('18.6'); await p.getByRole('textbox',{name:'Middle'}).fill('18.8'); await p.getByRole('textbox',{name:'Last full turn'}).fill('18.85'); await p.keyboard.press('Tab'); await p.waitForTimeout(500); await shot('4wear-answered');
   const id=p.url().split('/').pop();
   await p.goto('http://localhost:4203/#/sheet/'+id); await p.locator('.wear-note').waitFor(); await p.waitForTimeout(500); await shot('5sheet');
   await p.goto('http://localhost:4203/#/result/'+id); await p.locator('.result-page').waitFor(); await p.waitForTimeout(500); await shot('6result');
  }
  await c.close();
}
await b.close();
