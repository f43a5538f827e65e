#include "ui/look/page_help.h"

#include <QKeyEvent>
#include <QWidget>
#include <algorithm>
#include <array>

namespace ui {

namespace {

/// All that a widget of ours has been seen to answer to, in the order in which help lists it.
std::vector<Qt::Key> allKeys()
{
    std::vector<Qt::Key> keys{Qt::Key_Up, Qt::Key_Down, Qt::Key_Left, Qt::Key_Right, Qt::Key_Return,
        Qt::Key_Insert, Qt::Key_Plus, Qt::Key_Minus, Qt::Key_Delete, Qt::Key_Backspace,
        Qt::Key_Escape, Qt::Key_Tab, Qt::Key_Home, Qt::Key_End, Qt::Key_PageUp, Qt::Key_PageDown};
    const auto addAll = [&keys](int first, int last) {
        for (int key = first; key <= last; ++key)
            keys.push_back(Qt::Key(key));
    };
    addAll(Qt::Key_F1, Qt::Key_F12);
    addAll(Qt::Key_A, Qt::Key_Z);
    addAll(Qt::Key_0, Qt::Key_9);
    return keys;
}

constexpr std::array<Qt::KeyboardModifiers, 7> kHeld{Qt::NoModifier, Qt::ShiftModifier,
    Qt::ControlModifier, Qt::AltModifier, Qt::ControlModifier | Qt::ShiftModifier,
    Qt::ControlModifier | Qt::AltModifier, Qt::AltModifier | Qt::ShiftModifier};

} // namespace

HelpSection::HelpSection(const QString &heading, std::function<HelpRows()> rows, QWidget *of)
    : QObject(of)
    , m_heading(heading)
    , m_rows(std::move(rows))
{
}

HelpRow keyRow(const std::vector<QKeySequence> &keys, const QString &words)
{
    QStringList all;
    for (const QKeySequence &each : keys)
        all << each.toString(QKeySequence::NativeText);
    all.removeDuplicates();
    return {all.join(QStringLiteral(", ")), words};
}

void KeyRows::add(const QKeySequence &keys, const QString &words)
{
    auto row = std::ranges::find(m_keysOfWords, words, [](const auto &each) { return each.first; });
    if (row == m_keysOfWords.end())
        row = m_keysOfWords.insert(m_keysOfWords.end(), {words, {}});
    row->second.push_back(keys);
}

HelpRows KeyRows::rows() const
{
    HelpRows rows;
    for (const auto &[words, keys] : m_keysOfWords)
        rows.push_back(keyRow(keys, words));
    return rows;
}

HelpRows keysOf(const std::function<QString(const QKeyEvent &)> &wordsFor)
{
    KeyRows found;
    const auto wordsOf = [&wordsFor](Qt::Key key, Qt::KeyboardModifiers held) {
        return wordsFor(QKeyEvent(QEvent::KeyPress, key, held));
    };
    for (const Qt::KeyboardModifiers held : kHeld)
        for (const Qt::Key key : allKeys()) {
            const QString words = wordsOf(key, held);
            const auto isAlso = [&](Qt::KeyboardModifiers less) {
                return less != held && wordsOf(key, less) == words;
            };
            if (!words.isEmpty() && !isAlso(Qt::NoModifier) && !isAlso(held & ~Qt::ShiftModifier))
                found.add(QKeyCombination(held, key), words);
        }
    return found.rows();
}

} // namespace ui
