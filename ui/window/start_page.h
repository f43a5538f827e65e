#pragma once

#include <QStringList>
#include <QWidget>

class QVBoxLayout;

namespace ui {

/// What the window shows while no roster is open: what to do first, and the rosters opened lately.
class StartPage final : public QWidget
{
    Q_OBJECT

public:
    explicit StartPage(QWidget *parent = nullptr);

    void setRecent(const QStringList &paths);

Q_SIGNALS:
    void newAskedFor();
    void openAskedFor();
    void fileAskedFor(const QString &path);

private:
    QWidget *m_recent;
    QVBoxLayout *m_recentLayout;
};

} // namespace ui
