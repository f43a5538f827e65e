#pragma once

#include <QWidget>

class QPushButton;

namespace ui {

class FieldNote;

/// A message across the top of the window that does not stop the work: what failed, and what still
/// holds. Details for a report are behind a button.
class MessageBar final : public QWidget
{
    Q_OBJECT

public:
    explicit MessageBar(QWidget *parent = nullptr);

    void say(const QString &words, const QString &detail);
    /// Puts the words behind those that stand there already.
    void sayToo(const QString &words);

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    void showDetail();

    FieldNote *m_words;
    QPushButton *m_more;
    QString m_detail;
};

} // namespace ui
