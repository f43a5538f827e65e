#pragma once

#include <QObject>

namespace ui {

/// Fields of several rows do nothing on Ctrl+V while the clipboard is empty or who owned it has
/// gone: Qt 6.4 takes what is not there and ends the program. For the whole application.
class PasteGuard final : public QObject
{
    Q_OBJECT

public:
    explicit PasteGuard(QObject *parent = nullptr);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;
};

} // namespace ui
