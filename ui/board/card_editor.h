#pragma once

#include "core/notation/set_line_completion.h"

#include <QPlainTextEdit>
#include <functional>
#include <optional>
#include <vector>

class QLabel;
class QListWidget;

namespace ui {

class KeepQuestion;

/// The field that lies over a card while its text is edited. Enter takes the text, Shift+Enter
/// begins a row, Escape leaves it as it was. Text that is refused stays, with the cursor at the
/// column and the reason beside the field; text that looks like a slip is asked about there.
class CardEditor : public QPlainTextEdit
{
    Q_OBJECT

public:
    /// Why a text cannot be taken, and where.
    struct Refusal
    {
        int position = 0; ///< character, from 0
        QString words;
        bool mayKeep = false; ///< a question: the text is sound, and taken once the coach keeps it
    };
    using Check = std::function<std::optional<Refusal>(const QString &text)>;
    /// Stores the text; false where that failed.
    using Keep = std::function<bool(const QString &text)>;

    /// @param area  the widget that the reason may cover; outlives the editor
    CardEditor(
        Check check, Keep keep, const QString &accessibleName, QWidget *parent, QWidget *area);
    ~CardEditor() override;

    /// What may be typed next. Offered below the field: Tab takes the one that is marked, arrow
    /// keys mark another; Enter takes the text as it stands.
    using Completions =
        std::function<std::vector<core::Completion>(const QString &text, int cursor)>;
    void setCompletions(Completions completions);

    /// Shows the field and takes the focus.
    /// @param kept   what is stored
    /// @param typed  to begin with; empty begins with what is kept
    void open(const QString &kept, const QString &typed);
    /// Lies over `place`, and reaches below it where the text needs that.
    void moveTo(const QRect &place);

    /// Takes the text if it is sound and can be stored; else it stays, with the reason beside it,
    /// or with a question whether it is meant.
    bool take();
    /// The card is about to go out of sight: takes the text, or leaves it where nothing was
    /// changed. False where it is refused or asked about; then the field has the focus, and says
    /// why.
    bool settle();

Q_SIGNALS:
    /// Ended by a key: the focus wants to go back to the card.
    void left();

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void focusOutEvent(QFocusEvent *event) override;
    void moveEvent(QMoveEvent *event) override;
    bool focusNextPrevChild(bool next) override;

private:
    void fit();
    void offer();
    void complete();
    [[nodiscard]] QPoint below(const QWidget *note) const;
    void showRefusal();
    void showReason(const QString &words);
    void ask(const QString &words);
    void keep();
    bool store();
    void finish();

    Check m_check;
    Keep m_keep;
    QLabel *m_reason;         ///< child of the area
    KeepQuestion *m_question; ///< child of the area
    QListWidget *m_offers;    ///< child of the area
    Completions m_completions;
    std::vector<core::Completion> m_offered;
    QString m_kept;
    QRect m_place;
    bool m_done = false;
};

} // namespace ui
