#include "ui/window/start_page.h"

#include "ui/look/form_parts.h"

#include <QCommandLinkButton>
#include <QDir>
#include <QFileInfo>
#include <QPushButton>

namespace ui {

namespace {
constexpr int kStartWidth = 560;
}

StartPage::StartPage(QWidget *parent)
    : QWidget(parent)
    , m_recent(new QWidget)
    , m_recentLayout(new QVBoxLayout(m_recent))
{
    QLabel *words = plainWords(
        tr("A roster holds your lifters, what they lifted and what you plan for them, in one file "
           "that you keep where you like. Begin with a new roster, add your lifters or import a "
           "training log, and the week board gives each planned set a load. Every change is saved "
           "at once and can be undone."));

    auto *fresh = named("newRoster", new QPushButton(tr("&New roster…")));
    fresh->setDefault(true);
    auto *open = named("openRoster", new QPushButton(tr("&Open a roster…")));
    m_recentLayout->setContentsMargins(0, space::group, 0, 0);
    m_recentLayout->setSpacing(space::hair);

    auto *middle = new QWidget;
    middle->setFixedWidth(kStartWidth);
    middle->setLayout(columnLayout({Stretch{2}, label(Type::title, tr("Benchwright")), words,
        space::gap, rowLayout({fresh, open, Stretch{}}), m_recent, Stretch{3}}));
    setLayout(rowLayout({Stretch{}, middle, Stretch{}}));

    connect(fresh, &QPushButton::clicked, this, &StartPage::newAskedFor);
    connect(open, &QPushButton::clicked, this, &StartPage::openAskedFor);
}

void StartPage::setRecent(const QStringList &paths)
{
    while (QLayoutItem *item = m_recentLayout->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    m_recent->setVisible(!paths.isEmpty());
    if (paths.isEmpty())
        return;
    m_recentLayout->addWidget(label(Type::heading, tr("Opened lately")));
    for (const QString &path : paths) {
        const QFileInfo file(path);
        auto *link = new QCommandLinkButton(
            file.completeBaseName(), QDir::toNativeSeparators(file.absolutePath()));
        link->setEnabled(file.exists());
        if (!file.exists())
            link->setDescription(tr("not there now: %1").arg(link->description()));
        connect(
            link, &QCommandLinkButton::clicked, this, [this, path] { Q_EMIT fileAskedFor(path); });
        m_recentLayout->addWidget(link);
    }
}

} // namespace ui
