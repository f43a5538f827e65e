#pragma once

#include <QObject>

class QHelpEvent;
class QString;
class QWidget;

namespace ui {

/// The tip of what has no room for all of its text: fields to choose from, buttons, cells and
/// headers say it in full, whatever page they are on. And no tip is taken for HTML. For the whole
/// application.
class ElidedTips final : public QObject
{
    Q_OBJECT

public:
    explicit ElidedTips(QObject *parent = nullptr);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;
};

/// Plain text that wraps, whatever a coach wrote.
void showPlainTip(const QHelpEvent &asked, const QString &words, QWidget *widget);

} // namespace ui
