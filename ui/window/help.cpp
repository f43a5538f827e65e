#include "ui/window/help.h"

#include "ui/look/scrolling_room.h"
#include "ui/look/text.h"

#include <QAction>
#include <QDialog>
#include <QDialogButtonBox>
#include <QMainWindow>
#include <QMenu>
#include <QMenuBar>
#include <QMessageBox>
#include <QTextBrowser>
#include <QVBoxLayout>
#include <utility>

namespace ui {

namespace {

QString row(const QString &keys, const QString &words)
{
    return QStringLiteral("<tr><td style='padding-right:24px'><b>%1</b></td><td>%2</td></tr>")
        .arg(keys.toHtmlEscaped(), words.toHtmlEscaped());
}

QString heading(const QString &words)
{
    return QStringLiteral("<tr><td colspan='2'><h4>%1</h4></td></tr>").arg(words.toHtmlEscaped());
}

QString withoutMnemonic(QString text)
{
    return text.remove(u'&').remove(u'…');
}

} // namespace

QString shortcutsHtml(const QMainWindow &window)
{
    QString rows;
    for (const QAction *menu : window.menuBar()->actions()) {
        if (!menu->menu())
            continue;
        QString ofMenu;
        for (const QAction *action : menu->menu()->actions())
            if (!action->shortcut().isEmpty())
                ofMenu += row(action->shortcut().toString(QKeySequence::NativeText),
                    withoutMnemonic(action->text()));
        if (!ofMenu.isEmpty())
            rows += heading(withoutMnemonic(menu->text())) + ofMenu;
    }
    rows += heading(Text::tr("Lifter list"));
    for (const auto &[keys, words] :
        {std::pair{Text::tr("Down or Enter"), Text::tr("from the search into the list")},
            {Text::tr("Enter"), Text::tr("edit the lifter chosen")},
            {Text::tr("Esc"), Text::tr("clear the search")}})
        rows += row(keys, words);
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

void showShortcuts(const QMainWindow &window, QWidget *parent)
{
    QDialog dialog(parent);
    dialog.setWindowTitle(Text::tr("Keyboard shortcuts"));
    auto *text = new QTextBrowser;
    text->setHtml(shortcutsHtml(window));
    auto *buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    auto *layout = new QVBoxLayout(&dialog);
    layout->addWidget(text);
    layout->addWidget(buttons);
    sizeToScreen(dialog, {520, 560});
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
