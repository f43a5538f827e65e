#pragma once

#include <QPlainTextEdit>
#include <functional>
#include <optional>

class QLabel;

namespace ui {

/// The field that lies over a card while its text is edited. Enter takes the text, Shift+Enter
/// begins a row, Escape leaves it as it was. Text that is refused stays, with the cursor at the
/// column and the reason beside the field.
class CardEditor : public QPlainTextEdit
{
    Q_OBJECT

public:
    /// Why a text cannot be taken, and where.
    struct Refusal
    {
        int position = 0; ///< character, from 0
        QString words;
    };
    using Check = std::function<std::optional<Refusal>(const QString &text)>;

    /// @param area  the widget that the reason may cover; outlives the editor
    CardEditor(Check check, const QString &accessibleName, QWidget *parent, QWidget *area);
    ~CardEditor() override;

    /// Shows the field with the text and takes the focus.
    void open(const QString &text);
    /// Lies over `place`, and reaches below it where the text needs that.
    void moveTo(const QRect &place);

    /// Takes the text if it is sound; else shows why not and returns false.
    bool take();

Q_SIGNALS:
    void taken(const QString &text);
    /// Ended by a key: the focus wants to go back to the card.
    void left();

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void focusOutEvent(QFocusEvent *event) override;
    void moveEvent(QMoveEvent *event) override;

private:
    void fit();
    void showRefusal();
    void finish();

    Check m_check;
    QLabel *m_reason; ///< child of the area
    QRect m_place;
    bool m_done = false;
};

} // namespace ui
