"""The loop of hand-out and return in a real browser: hand out, check in, log by taps, save the
return sheet, read it into the roster, and see the estimate move.

Usage: browser_loop.py BENCHWRIGHT [PICTURES]   (PICTURES: a folder for pictures of each step)
Ends with 77, which ctest counts as skipped, where the browser is not installed."""

import csv
import glob
import json
import os
import shutil
import subprocess
import sys
import tempfile
import time

CHROMIUM, DRIVER = '/usr/bin/chromium', '/usr/bin/chromedriver'
PHONE = {'width': 390, 'height': 844, 'pixelRatio': 2.0, 'touch': True}
NAME = 'Jonah Creswick'  # who has missed Monday of the demo's week


def check(condition, words):
    if not condition:
        raise AssertionError(words)


def run(*arguments, code=0):
    done = subprocess.run([PROGRAM, *arguments], capture_output=True, text=True, check=False)
    check(done.returncode == code, f'{arguments}: {done.returncode}\n{done.stdout}{done.stderr}')
    return done.stdout


class Phone:
    """A hand-out on a phone without a network. Every touch is a tap of the browser's own."""

    def __init__(self, folder, dark=False):
        options = Options()
        options.binary_location = CHROMIUM
        for flag in ('headless=new', 'no-sandbox', 'disable-gpu', 'disable-dev-shm-usage'):
            options.add_argument('--' + flag)
        options.add_experimental_option('mobileEmulation', {'deviceMetrics': PHONE})
        options.add_experimental_option('prefs', {'download.default_directory': folder})
        options.set_capability('goog:loggingPrefs', {'browser': 'ALL', 'performance': 'ALL'})
        self.driver = webdriver.Chrome(options=options, service=Service(DRIVER))
        self.folder = folder
        self.command('Network.enable', {})
        self.command('Network.emulateNetworkConditions', {
            'offline': True, 'latency': 0, 'downloadThroughput': 0, 'uploadThroughput': 0})
        if dark:
            self.command('Emulation.setEmulatedMedia', {
                'features': [{'name': 'prefers-color-scheme', 'value': 'dark'}]})

    def command(self, name, values):
        return self.driver.execute_cdp_cmd(name, values)

    def open(self, path):
        self.driver.get('file://' + path)

    def tap(self, selector):
        """Scrolls the element to the middle and taps where a finger would."""
        box = self.driver.execute_script('''
            const node = document.querySelector(arguments[0]);
            if (!node) return null;
            node.scrollIntoView({block: 'center', behavior: 'instant'});
            const box = node.getBoundingClientRect();
            return [box.left, box.top, box.width, box.height];''', selector)
        check(box, f'nothing to tap at {selector}')
        check(box[2] >= 44 and box[3] >= 44, f'{selector} is too small a target: {box}')
        point = {'x': box[0] + box[2] / 2, 'y': box[1] + box[3] / 2}
        self.command('Input.dispatchTouchEvent', {'type': 'touchStart', 'touchPoints': [point]})
        self.command('Input.dispatchTouchEvent', {'type': 'touchEnd', 'touchPoints': []})
        time.sleep(0.05)

    def type(self, selector, text):
        self.tap(selector)
        self.driver.execute_script('document.querySelector(arguments[0]).select()', selector)
        self.command('Input.insertText', {'text': text})

    def text(self, selector='#page'):
        return self.driver.execute_script(
            'return document.querySelector(arguments[0]).innerText', selector)

    def count(self, selector):
        return self.driver.execute_script(
            'return document.querySelectorAll(arguments[0]).length', selector)

    def small_targets(self):
        return self.driver.execute_script('''
            return [...document.querySelectorAll('button, .chip, select, input[type=text], summary')]
                .filter(node => node.offsetParent && (node.offsetWidth < 44 || node.offsetHeight < 44))
                .map(node => node.outerHTML.slice(0, 80));''')

    def is_wider_than_the_screen(self):
        return self.driver.execute_script(
            'return document.documentElement.scrollWidth > innerWidth')

    def downloaded(self):
        for _ in range(100):
            found = glob.glob(os.path.join(self.folder, '*.csv'))
            if found and os.path.getsize(found[0]):
                return found[0]
            time.sleep(0.1)
        raise AssertionError('no return sheet was saved')

    def requests(self):
        """Addresses that the page asked for, itself and its own blob apart."""
        asked = []
        for entry in self.driver.get_log('performance'):
            message = json.loads(entry['message'])['message']
            if message['method'] == 'Network.requestWillBeSent':
                asked.append(message['params']['request']['url'])
        return [url for url in asked if not url.startswith(('file:', 'blob:', 'data:'))]

    def picture(self, name):
        if PICTURES:
            self.driver.save_screenshot(os.path.join(PICTURES, name + '.png'))

    def close(self):
        self.driver.quit()


def log_a_session(phone):
    """Checks in and logs the first day that has a bench press to accept; returns its date."""
    days = phone.driver.execute_script('return plan.days.map(day => day.date)')
    bench = phone.driver.execute_script(
        'return plan.days.findIndex(day => day.cards[0].lift === "bench" && '
        'day.cards[0].sets[0].isExact && day.cards[0].sets[0].loadKg)')
    check(bench >= 0, 'the demo plan begins no day with a bench press')
    phone.tap(f'#day-{days[bench]}')
    phone.picture('1-day')
    for answer in ('#sleep-2', '#stress-3', '#motivation-5', '#sore-some', '#sore-back-2'):
        phone.tap(f'label:has({answer})')
    phone.tap('label:has(#pain-no)')
    check('Done as planned' in phone.text('[id="set-1.1"]'), 'nothing hurts, and it is held back')
    phone.tap('[id="set-1.1-accept"]')
    phone.tap('label:has([id="rpe-6.5"])')
    phone.tap('label:has(#touch-2)')
    phone.picture('3-accepted')
    check('touch 2' in phone.text('[id="set-1.1"]'), 'the accepted set is not shown as said')

    other = phone.driver.execute_script(
        'return [...document.querySelectorAll("[id]")].map(e => e.id)'
        '.find(id => /^set-\\d+\\.\\d+$/.test(id) && id !== "set-1.1")')
    check(other, 'the day has one set only')
    phone.tap('label:has(#pain-elsewhere)')
    check('Held back' in phone.text(f'[id="{other}"]')
          and 'Where does it hurt?' in phone.text(f'[id="{other}"]'),
          'pain that may be anywhere holds nothing back, or nobody asks where')
    phone.tap('label:has(#pain-elbows)')
    check('Where does it hurt?' not in phone.text(), 'the place is asked for that was told')
    phone.type('#pain-words', 'left, <b>sharp</b> at the bottom')
    check('doctor or physiotherapist' in phone.text(), 'pain brings no warning')
    check('Held back' in phone.text(f'[id="{other}"]')
          and 'Done as planned' not in phone.text(f'[id="{other}"]'), 'pain holds nothing back')
    phone.picture('2-check-in')

    phone.tap('#add-1')
    check(phone.driver.execute_script('return document.getElementById("load").value') == '',
          'a load is suggested in spite of pain')
    phone.type('#load', '60')
    phone.tap('#load-more')
    phone.type('#reps', '0')
    phone.tap('#save')
    check(phone.count('#save') == 1, 'a set without a rep and without a miss was taken')
    phone.type('#reps', '6')
    phone.tap('label:has([id="rpe-6"])')
    phone.type('#note', 'felt, "easy" <script>alert(1)</script>')
    phone.picture('4-extra-set')
    phone.tap('#save')
    check('Extra set' in phone.text(), 'the extra set is not shown')
    return days[bench]


def main():
    work = tempfile.mkdtemp(prefix='benchwright-browser-')
    at = lambda *names: os.path.join(work, *names)
    phone = None
    try:
        run('demo', at('demo'))
        roster = at('demo', 'demo.benchwright')
        run('handout', roster, '--out', at('plans'), '--lifter', NAME, '--accept', 'under supervision')
        page, = glob.glob(at('plans', '*.html'))
        os.mkdir(at('phone'))
        phone = Phone(at('phone'))
        phone.open(page)
        check(NAME in phone.text(), 'the page does not name the lifter')
        trained_on = log_a_session(phone)

        phone.open(page)  # closed and opened again
        phone.tap(f'#day-{trained_on}')
        check('touch 2' in phone.text(), 'entries do not outlive the page')
        check(not phone.small_targets(), f'too small to tap: {phone.small_targets()}')
        check(not phone.is_wider_than_the_screen(), 'the page is wider than the phone')

        phone.tap('#give')
        phone.picture('5-give-back')
        phone.tap('#save-sheet')
        sheet = phone.downloaded()
        check('Saved as' in phone.text(), 'the page does not say that it saved')
        errors = [entry for entry in phone.driver.get_log('browser')
                  if entry['level'] == 'SEVERE']
        check(not errors, f'the browser complains: {errors}')
        check(not phone.requests(), f'the page asked the network for {phone.requests()}')
        phone.close()
        phone = Phone(at('phone'), dark=True)
        phone.open(page)
        phone.picture('6-dark')

        with open(sheet, newline='', encoding='utf-8') as lines:
            rows = list(csv.DictReader(lines))
        done = [row for row in rows if row['row'] == 'set']
        check(len(done) == 2 and done[0]['rpe'] == '6.5' and done[1]['reps_done'] == '6', done)
        said, = [row for row in rows if row['row'] == 'check_in']
        check(said['pain'] == 'elbows' and said['sore_back'] == '2' and said['sleep'] == '2', said)

        before = estimate(roster, at('before.csv'))
        dry = run('return', roster, sheet, '--dry-run')
        check('Nothing was changed' in dry, dry)
        check(estimate(roster, at('dry.csv')) == before, 'a dry run changed the roster')
        told = run('return', roster, sheet)
        check('PAIN' in told and 'extra set' in told and 'Sheets accepted: 1 of 1' in told, told)
        after = estimate(roster, at('after.csv'))
        check(after != before, f'the estimate did not move: {before}')
        again = run('return', roster, sheet)
        check('nothing new' in again and 'Sheets accepted: 0 of 1' in again, again)
        print(f'{NAME}: {before} kg before, {after} kg after the return sheet of {trained_on}')
    finally:
        if phone:
            phone.close()
        shutil.rmtree(work, ignore_errors=True)


def estimate(roster, path):
    """Latest filtered estimate of the lifter, as the program works it out from the roster's log."""
    run('export', roster, '--log', path)
    run('estimate', '--log', path, '--out', path + '.estimates')
    with open(path + '.estimates', newline='', encoding='utf-8') as lines:
        rows = [row for row in csv.DictReader(lines)
                if row['lifter'] == NAME and row['view'] == 'filtered']
    return rows[-1]['estimate_kg']


if __name__ == '__main__':
    PROGRAM = sys.argv[1]
    PICTURES = sys.argv[2] if len(sys.argv) > 2 else None
    if not (os.path.exists(CHROMIUM) and os.path.exists(DRIVER)):
        print('chromium or chromedriver is not installed')
        sys.exit(77)
    from selenium import webdriver
    from selenium.webdriver.chrome.options import Options
    from selenium.webdriver.chrome.service import Service
    main()
