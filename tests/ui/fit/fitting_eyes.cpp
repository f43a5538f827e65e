#include "tests/ui/fit/hostile_roster.h"
#include "tests/ui/fit/misfits.h"
#include "tests/ui/tour/eyes.h"
#include "ui/look/scrolling_room.h"

#include <QMainWindow>
#include <QScreen>
#include <QScrollBar>
#include <QSet>
#include <QStackedWidget>
#include <gmock/gmock.h>

namespace tests {

namespace {

/// What a frame's title takes of the screen, in its pixels.
constexpr int kTitle = 28;

/// Measures: every window fits the screen that this program was given, and everything in it fits
/// the window, or scrolls.
class FittingEyes final : public Eyes
{
public:
    void makeRoster(const QString &path, QDate today) const override
    {
        makeHostileRoster(path, today);
    }
    void makeEmptyRoster(const QString &path) const override
    {
        static_cast<void>(core::RosterFile::create(path));
    }

    void place(QWidget &window) const override { window.resize(room(window)); }

    void look(QWidget &widget, const QString &state, const QStringList &) override
    {
        QWidget &window = *widget.window();
        const QSize most = room(window);
        if (qobject_cast<QMainWindow *>(&window)) {
            if (window.size() != most)
                say(state, QStringLiteral("the window has grown to %1").arg(words(window.size())));
            window.resize(most);
            if (!isScaled(window))
                for (QScrollArea *page : window.findChildren<ui::ScrollingRoom *>())
                    if (page->isVisible() && qobject_cast<QStackedWidget *>(page->widget())
                        && (page->verticalScrollBar()->maximum() > 0
                            || page->horizontalScrollBar()->maximum() > 0))
                        say(state, QStringLiteral("the pages are scrolled"));
        }
        const QSize least = window.minimumSizeHint().expandedTo(window.minimumSize());
        if (least.width() > most.width() || least.height() > most.height())
            say(state, QStringLiteral("%1 needs %2").arg(nameOf(window), words(least)));
        if (window.width() > most.width() || window.height() > most.height())
            say(state, QStringLiteral("%1 takes %2").arg(nameOf(window), words(window.size())));
        for (const QString &misfit : misfits(widget))
            say(state, misfit);
    }

private:
    static QSize room(const QWidget &window)
    {
        const QScreen &screen = *window.screen();
        return screen.size() - QSize(0, qRound(kTitle / screen.devicePixelRatio()));
    }
    /// On less room than the pages promise to fit they may scroll.
    static bool isScaled(const QWidget &window) { return room(window).width() < 1280; }
    static QString words(const QSize &size)
    {
        return QStringLiteral("%1 x %2").arg(size.width()).arg(size.height());
    }
    static QString nameOf(const QWidget &window)
    {
        return QString::fromLatin1(window.metaObject()->className());
    }

    /// Once for each kind of misfit.
    void say(const QString &state, const QString &misfit)
    {
        if (m_said.contains(misfit))
            return;
        m_said.insert(misfit);
        ADD_FAILURE() << qPrintable(state) << ": " << qPrintable(misfit);
    }

    QSet<QString> m_said;
};

} // namespace

std::unique_ptr<Eyes> makeEyes()
{
    return std::make_unique<FittingEyes>();
}

} // namespace tests
