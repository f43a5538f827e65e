#pragma once

#include <QStringList>
#include <QWidget>
#include <optional>
#include <vector>

class QLabel;
class QToolButton;

namespace ui {

/// One answer from 1 to 5, with its words. The keys 1 to 5 answer, the arrow keys move the answer,
/// Delete and a second click take it back.
class ScaleField : public QWidget
{
    Q_OBJECT

public:
    /// @param steps  the words of 1 to 5
    ScaleField(const QString &name, QStringList steps, QWidget *parent = nullptr);

    [[nodiscard]] std::optional<int> answer() const { return m_answer; }
    /// Shows an answer; answered() is not emitted.
    void setAnswer(std::optional<int> answer);

Q_SIGNALS:
    /// By the coach.
    void answered();

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void paintEvent(QPaintEvent *event) override;
    void focusInEvent(QFocusEvent *event) override;
    void focusOutEvent(QFocusEvent *event) override;

private:
    void take(std::optional<int> answer);

    QString m_name;
    QStringList m_steps;
    std::vector<QToolButton *> m_buttons;
    QLabel *m_words;
    std::optional<int> m_answer;
};

} // namespace ui
