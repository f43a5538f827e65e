#pragma once

#include <QFrame>

class QPushButton;

namespace ui {

class FieldNote;

/// Asks in place whether what looks like a slip of the keys is meant: kept, or changed.
class KeepQuestion final : public QFrame
{
    Q_OBJECT

public:
    enum class Keys {
        field, ///< the focus stays in the field asked about, in which Enter keeps and typing
               ///< changes
        own    ///< the question takes the focus
    };
    explicit KeepQuestion(Keys keys, QWidget *parent = nullptr);

    void ask(const QString &words);

Q_SIGNALS:
    void kept();
    void changeWanted();

protected:
    void changeEvent(QEvent *event) override;

private:
    void recolour();

    Keys m_keys;
    FieldNote *m_words;
    QPushButton *m_change;
};

} // namespace ui
