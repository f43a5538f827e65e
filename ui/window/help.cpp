#include "ui/window/help.h"

#include "ui/look/form_parts.h"
#include "ui/look/page_help.h"
#include "ui/look/scrolling_room.h"
#include "ui/look/text.h"

#include <QAbstractButton>
#include <QAction>
#include <QDialog>
#include <QDialogButtonBox>
#include <QLabel>
#include <QMainWindow>
#include <QMenu>
#include <QMenuBar>
#include <QMessageBox>
#include <QShortcut>
#include <QTextBrowser>
#include <QVBoxLayout>
#include <utility>

namespace ui {

namespace {

QString row(const QString &left, const QString &words)
{
    return QStringLiteral("<tr><td style='padding-right:24px'><b>%1</b></td><td>%2</td></tr>")
        .arg(left.toHtmlEscaped().replace(u'\n', QStringLiteral("<br>")), words.toHtmlEscaped());
}

QString headingRow(const QString &words)
{
    return QStringLiteral("<tr><td colspan='2'><h4>%1</h4></td></tr>").arg(words.toHtmlEscaped());
}

QString withoutMnemonic(QString text)
{
    return text.remove(u'&').remove(u'…');
}

QString htmlOf(const QString &title, const HelpRows &rows)
{
    if (rows.empty())
        return {};
    QString html = headingRow(title);
    for (const HelpRow &each : rows)
        html += row(each.left, each.words);
    return html;
}

/// What can be done by keys that the page says nothing of: its actions, shortcuts and mnemonics.
HelpRows keysIn(const QWidget &page)
{
    KeyRows keys;
    const auto add = [&keys](const QKeySequence &sequence, const QString &words) {
        if (!sequence.isEmpty())
            keys.add(sequence, withoutMnemonic(words));
    };
    for (const QShortcut *shortcut : page.findChildren<QShortcut *>())
        add(shortcut->key(), shortcut->whatsThis());
    for (const QAction *action : page.findChildren<QAction *>())
        add(action->shortcut(), action->text());
    for (const QAbstractButton *button : page.findChildren<QAbstractButton *>())
        if (button->isVisibleTo(&page))
            add(button->shortcut(), button->text());
    for (const QLabel *label : page.findChildren<QLabel *>())
        if (label->buddy() && label->isVisibleTo(&page))
            add(QKeySequence::mnemonic(label->text()), label->text());
    return keys.rows();
}

QString sectionsOf(const QWidget &of)
{
    QString html;
    QStringList told; // a page may hold a part more than once
    for (const HelpSection *section : of.findChildren<HelpSection *>())
        if (!told.contains(section->heading())) {
            told << section->heading();
            html += htmlOf(section->heading(), section->rows());
        }
    return html;
}

QString menusOf(const QMainWindow &window)
{
    QString html;
    for (const QAction *menu : window.menuBar()->actions()) {
        if (!menu->menu())
            continue;
        KeyRows keys;
        for (const QAction *action : menu->menu()->actions())
            if (!action->shortcut().isEmpty())
                keys.add(action->shortcut(), withoutMnemonic(action->text()));
        html += htmlOf(Text::tr("Menu %1").arg(withoutMnemonic(menu->text())), keys.rows());
    }
    return html;
}

} // namespace

QString helpHtml(const QMainWindow &window, const HelpOn &on)
{
    QString rows;
    if (on.page)
        rows += htmlOf(Text::tr("Keys of this page: %1").arg(withoutMnemonic(on.pageName)),
                    keysIn(*on.page))
            + sectionsOf(*on.page);
    if (on.list)
        rows += sectionsOf(*on.list);
    rows += menusOf(window);
    return QStringLiteral("<table cellspacing='4'>%1</table>").arg(rows);
}

QString safetyNote()
{
    return Text::tr(
        "<p>Benchwright gives a coach arithmetic, not medical advice. Its estimates and loads are "
        "suggestions with a margin of error; the coach who sees the lifter decides.</p>"
        "<p>Local rules, the federation's rule book and licensed practice come first.</p>"
        "<p>Use a spotter or safeties for every heavy bench press, keep the thumbs around the bar, "
        "and leave the collars off when lifting alone without safeties. At sharp or unusual pain, "
        "stop, and refer the lifter to a licensed professional. No maximal work for minors and "
        "novices without qualified supervision.</p>");
}

QString aboutHtml()
{
    return Text::tr(
        "<h3>Benchwright %1</h3>"
        "<p>A strength coach's workbench for programming the bench press.</p>"
        "<p>Free software under the GNU General Public License, version 3 or later, without any "
        "warranty. You may use, study, share and change it; the file LICENSE holds the terms.</p>"
        "<p>Built with Qt %2, SQLite and Eigen.</p>")
        .arg(QStringLiteral(BENCHWRIGHT_VERSION), QString::fromLatin1(qVersion()));
}

void showHelp(const QMainWindow &window, const HelpOn &on, QWidget *parent)
{
    QDialog dialog(parent);
    dialog.setWindowTitle(Text::tr("Keys and set lines"));
    auto *text = named("helpText", new QTextBrowser);
    text->setHtml(helpHtml(window, on));
    auto *buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    auto *layout = new QVBoxLayout(&dialog);
    layout->addWidget(text);
    layout->addWidget(buttons);
    sizeToScreen(dialog, {640, 600});
    dialog.exec();
}

void showSafetyNote(QWidget *parent)
{
    QMessageBox box(
        QMessageBox::Information, Text::tr("Safety"), safetyNote(), QMessageBox::Close, parent);
    box.exec();
}

void showAbout(QWidget *parent)
{
    QMessageBox::about(parent, Text::tr("About Benchwright"), aboutHtml());
}

} // namespace ui
