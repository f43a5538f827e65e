#pragma once

#include "core/domain/variation.h"

#include <QWidget>
#include <vector>

class QButtonGroup;
class QLabel;
class QLineEdit;
class QListView;

namespace ui {

class ShelfModel;

/// What is dragged onto the board: the catalogue, grouped and filtered by touch style. A card that
/// is dropped here comes off the board.
class VariationShelf : public QWidget
{
    Q_OBJECT

public:
    explicit VariationShelf(QWidget *parent = nullptr);

    void setCatalogue(const std::vector<core::Variation> &catalogue, core::TouchStyle style);

    /// Puts the cursor into the search with `typed`, and says where the choice goes.
    void search(const QString &typed, const QString &goesTo);
    /// Offers to take back the card that is being dragged.
    void setCardDragged(bool active);

Q_SIGNALS:
    /// Enter or a double click on a variation.
    void chosen(core::VariationId variation);
    /// Escape: back to the board.
    void left();
    void cardDropped(core::CardId card);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;
    void dragEnterEvent(QDragEnterEvent *event) override;
    void dropEvent(QDropEvent *event) override;
    void changeEvent(QEvent *event) override;

private:
    void paintChips();
    void refill();
    void step(int by);
    void choose();
    void showHint(const QString &text, bool isRemoval);

    std::vector<core::Variation> m_catalogue;
    core::TouchStyle m_style = core::TouchStyle::undecided;
    ShelfModel *m_model;
    QLabel *m_hint;
    QLineEdit *m_search;
    QButtonGroup *m_chips;
    QListView *m_list;
    QLabel *m_nothing; ///< in the place of the list when no variation passes
};

} // namespace ui
