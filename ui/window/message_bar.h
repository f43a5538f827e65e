#pragma once

#include <QWidget>

class QPushButton;

namespace ui {

class FieldNote;

/// A message across the top of the window that does not stop the work: what failed, and what still
/// holds, on red; or what there is to know. Details for a report are behind a button.
class MessageBar final : public QWidget
{
    Q_OBJECT

public:
    explicit MessageBar(QWidget *parent = nullptr);

    void say(const QString &words, const QString &detail);
    /// Puts the words behind those that stand there already.
    void sayToo(const QString &words);
    /// A failure, or what was said of the last step: it goes with the next success.
    void sayForNow(const QString &words, const QString &detail);
    /// What there is to know of the step just made; it goes with the next one.
    void note(const QString &words);
    /// Something was stored: what was only for now goes.
    void takeSuccess();

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    void showDetail();
    void setNotice(bool isNotice);

    FieldNote *m_words;
    QPushButton *m_more;
    QString m_detail;
    bool m_isForNow = false;
    bool m_isNotice = false;
};

} // namespace ui
