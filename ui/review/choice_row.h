#pragma once

#include <QWidget>
#include <optional>

class QButtonGroup;

namespace ui {

/// Buttons in a row of which one at most is down. They count from 0.
class ChoiceRow : public QWidget
{
    Q_OBJECT

public:
    /// @param name  what is chosen, for a screen reader
    ChoiceRow(const QString &name, const QStringList &choices, QWidget *parent = nullptr);

    /// Says nothing; empty lets every button come up.
    void setChosen(std::optional<int> choice);

Q_SIGNALS:
    /// By the user.
    void chosen(int choice);

private:
    QButtonGroup *m_buttons;
};

} // namespace ui
