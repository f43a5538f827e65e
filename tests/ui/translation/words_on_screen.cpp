#include "tests/ui/translation/words_on_screen.h"

#include "tests/ui/translation/foreign_roster.h"
#include "tests/ui/translation/pseudo_translator.h"
#include "ui/window/roster_view.h"

#include <QAction>
#include <QFile>
#include <QFileDialog>
#include <QRegularExpression>
#include <QTabWidget>
#include <QTest>
#include <QTimer>

namespace tests {

namespace {

/// For every test of the program: words that are made once stay as they are made.
class Abroad final : public testing::Environment
{
public:
    void SetUp() override
    {
        QLocale::setDefault(QLocale(QLocale::Greek));
        QCoreApplication::installTranslator(&m_translator);
    }

private:
    PseudoTranslator m_translator;
};

[[maybe_unused]] const auto *const kAbroad = testing::AddGlobalTestEnvironment(new Abroad);

} // namespace

WordsOnScreen::WordsOnScreen()
{
    const QString path = folder.path(QStringLiteral("ω.benchwright"));
    makeForeignRoster(path, clock.today.date());
    window.show();
    QApplication::setActiveWindow(&window);
    EXPECT_TRUE(window.openFile(path));
    EXPECT_TRUE(QTest::qWaitFor(
        [this] { return !roster().estimates().isBusy() && !roster().insights().isBusy(); },
        60'000));
    data << folder.path({}) << QStringLiteral(".benchwright");
    for (const core::Variation &variation : roster().openRoster().variations())
        data << variation.code;
}

void WordsOnScreen::TearDown()
{
    if (!window.roster())
        return;
    const QUndoStack &steps = roster().openRoster().steps();
    for (int step = 0; step < steps.count(); ++step)
        expectNoLatin({{"step", steps.text(step)}}, "undo");
}

void WordsOnScreen::look(QWidget &widget, const QString &state)
{
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QCoreApplication::processEvents();
    expectNoLatin(visibleText(widget), state);
}

void WordsOnScreen::expectNoLatin(const std::vector<VisibleText> &visible, const QString &state)
{
    for (const QString &text : latinText(visible, data))
        if (!m_said.contains(text)) {
            m_said.insert(text);
            ADD_FAILURE() << qPrintable(state) << ": " << qPrintable(text);
        }
}

void WordsOnScreen::lookAtPages(const QString &state)
{
    for (int page = 0; page < roster().pages().count(); ++page) {
        roster().showPage(page);
        look(window, state + QStringLiteral(" on page ") + QString::number(page + 1));
    }
}

void WordsOnScreen::lookAtDialog(
    const QString &state, const std::function<void()> &open, const std::function<void()> &inIt)
{
    bool isSeen = false;
    QTimer::singleShot(0, &window, [&] {
        isSeen = true;
        QWidget *dialog = QApplication::activePopupWidget();
        if (!dialog)
            dialog = QApplication::activeModalWidget();
        ASSERT_NE(dialog, nullptr) << qPrintable(state);
        if (auto *files = qobject_cast<QFileDialog *>(dialog)) {
            // The rest of it is Qt's, and the names of folders.
            QWidget ours;
            ours.setWindowTitle(files->windowTitle());
            ours.setToolTip(files->nameFilters().join(u'\n').remove(
                QRegularExpression(QStringLiteral("\\(\\*[^)]*\\)"))));
            look(ours, state);
        } else {
            look(*dialog, state);
            if (inIt)
                inIt();
        }
        if (dialog->isVisible())
            dialog->close();
    });
    open();
    EXPECT_TRUE(QTest::qWaitFor([&] { return isSeen; })) << qPrintable(state);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

QAction *WordsOnScreen::action(const char *english)
{
    const QString text = pseudo(QString::fromLatin1(english));
    for (QAction *action : window.findChildren<QAction *>())
        if (action->text().remove(u'&').remove(u'…') == text)
            return action;
    ADD_FAILURE() << "no action " << english;
    return new QAction(&window);
}

QString WordsOnScreen::write(const QString &name, const QByteArray &contents)
{
    QFile file(folder.path(name));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(contents);
    return file.fileName();
}

void WordsOnScreen::choose(const char *name)
{
    for (const core::Lifter &lifter : roster().openRoster().lifters())
        if (lifter.name == foreign(QString::fromLatin1(name))) {
            roster().selection().setLifter(lifter.id);
            return;
        }
    ADD_FAILURE() << "no lifter " << name;
}

} // namespace tests
