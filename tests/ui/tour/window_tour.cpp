#include "tests/ui/tour/window_tour.h"

#include "ui/window/roster_view.h"

#include <QAction>
#include <QFile>
#include <QFileDialog>
#include <QMessageBox>
#include <QPushButton>
#include <QRegularExpression>
#include <QTabWidget>
#include <QTest>
#include <QTimer>

namespace tests {

namespace {

/// Tells whether anything is being laid out.
class LayoutWatch : public QObject
{
public:
    LayoutWatch() { qApp->installEventFilter(this); }
    bool isStill = true;

protected:
    bool eventFilter(QObject *, QEvent *event) override
    {
        if (event->type() == QEvent::LayoutRequest || event->type() == QEvent::Resize)
            isStill = false;
        return false;
    }
};

/// Waits for the layout: a scroll bar that comes narrows what wraps, which is higher then, and so
/// on.
void settle()
{
    constexpr int kMost = 60, kStill = 3;
    LayoutWatch watch;
    for (int round = 0, still = 0; round < kMost && still < kStill; ++round) {
        watch.isStill = true;
        QTest::qWait(1);
        still = watch.isStill ? still + 1 : 0;
    }
}

} // namespace

WindowTour::WindowTour()
{
    const QString path = folder.path(QStringLiteral("ω.benchwright"));
    m_eyes->makeRoster(path, clock.today.date());
    m_eyes->place(window);
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

void WindowTour::TearDown()
{
    if (!window.roster())
        return;
    const QUndoStack &steps = roster().openRoster().steps();
    for (int step = 0; step < steps.count(); ++step)
        read(steps.text(step), "undo");
}

void WindowTour::look(QWidget &widget, const QString &state)
{
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    settle();
    m_eyes->look(widget, state, data);
}

void WindowTour::lookAtPages(const QString &state)
{
    for (int page = 0; page < roster().pages().count(); ++page) {
        roster().showPage(page);
        look(window, state + QStringLiteral(" on page ") + QString::number(page + 1));
    }
}

void WindowTour::lookAtDialog(
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
        if (dialog->isVisible()) {
            // What was typed is asked about, by one more dialog.
            QTimer::singleShot(0, dialog, [this, dialog, state] {
                auto *question = qobject_cast<QMessageBox *>(QApplication::activeModalWidget());
                auto *drop =
                    question ? question->findChild<QPushButton *>(QStringLiteral("drop")) : nullptr;
                if (!drop || question == dialog)
                    return;
                look(*question, state + QStringLiteral(": what was typed"));
                drop->click();
            });
            dialog->close();
        }
    });
    open();
    EXPECT_TRUE(QTest::qWaitFor([&] { return isSeen; })) << qPrintable(state);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

QAction *WindowTour::action(const char *english)
{
    const QString text = said(QString::fromLatin1(english));
    for (QAction *action : window.findChildren<QAction *>())
        if (action->text().remove(u'&').remove(u'…') == text)
            return action;
    ADD_FAILURE() << "no action " << english;
    return new QAction(&window);
}

QString WindowTour::write(const QString &name, const QByteArray &contents)
{
    QFile file(folder.path(name));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(contents);
    return file.fileName();
}

void WindowTour::choose(const char *name)
{
    for (const core::Lifter &lifter : roster().openRoster().lifters())
        if (lifter.name.startsWith(written(QString::fromLatin1(name)))) {
            roster().selection().setLifter(lifter.id);
            return;
        }
    ADD_FAILURE() << "no lifter " << name;
}

} // namespace tests
