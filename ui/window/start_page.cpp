#include "ui/window/start_page.h"

#include "ui/look/field_note.h"
#include "ui/look/metrics.h"

#include <QCommandLinkButton>
#include <QDir>
#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui {

namespace {
constexpr int kTextWidth = 560;
}

StartPage::StartPage(QWidget *parent)
    : QWidget(parent)
    , m_recent(new QWidget)
    , m_recentLayout(new QVBoxLayout(m_recent))
{
    auto *title = new QLabel(tr("Benchwright"));
    title->setFont(ui::font(Type::title, font()));
    auto *words = new QLabel(
        tr("A roster holds your lifters, what they lifted and what you plan for them, in one file "
           "that you keep where you like. Begin with a new roster, add your lifters or import a "
           "training log, and the week board gives each planned set a load. Every change is saved "
           "at once and can be undone."));
    words->setWordWrap(true);

    auto *fresh = new QPushButton(tr("&New roster…"));
    fresh->setObjectName(QStringLiteral("newRoster"));
    fresh->setDefault(true);
    auto *open = new QPushButton(tr("&Open a roster…"));
    open->setObjectName(QStringLiteral("openRoster"));
    auto *buttons = new QHBoxLayout;
    buttons->addWidget(fresh);
    buttons->addWidget(open);
    buttons->addStretch();
    m_recentLayout->setContentsMargins(0, space::group, 0, 0);
    m_recentLayout->setSpacing(space::hair);

    auto *column = new QVBoxLayout;
    column->addStretch(2);
    column->addWidget(title);
    column->addWidget(words);
    column->addSpacing(space::gap);
    column->addLayout(buttons);
    column->addWidget(m_recent);
    column->addStretch(3);
    auto *middle = new QWidget;
    middle->setLayout(column);
    middle->setFixedWidth(kTextWidth);
    auto *layout = new QHBoxLayout(this);
    layout->addStretch();
    layout->addWidget(middle);
    layout->addStretch();

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
    auto *heading = new QLabel(tr("Opened lately"));
    heading->setFont(ui::font(Type::heading, font()));
    m_recentLayout->addWidget(heading);
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
