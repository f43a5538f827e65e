#include "ui/board/variation_shelf.h"

#include "ui/board/board_drag.h"
#include "ui/board/shelf_delegate.h"
#include "ui/board/shelf_model.h"
#include "ui/look/colours.h"
#include "ui/look/form_parts.h"
#include "ui/look/touch_mark.h"

#include <QButtonGroup>
#include <QDropEvent>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListView>
#include <QToolButton>

namespace ui {

namespace {

/// Ids of the chips; a button group keeps -1 for itself.
constexpr int kAllStyles = 0;
constexpr int chipId(core::Serves serves)
{
    return int(serves) + 1;
}
constexpr core::Serves servesOf(int chipId)
{
    return core::Serves(chipId - 1);
}

} // namespace

VariationShelf::VariationShelf(QWidget *parent)
    : QWidget(parent)
    , m_model(new ShelfModel(this))
    , m_hint(plainWords())
    , m_search(searchField(tr("Find a variation")))
    , m_chips(new QButtonGroup(this))
    , m_list(new QListView)
    , m_nothing(plainWords(tr("No variation fits. Type fewer words, or choose All.")))
{
    setAcceptDrops(true);
    setAccessibleName(tr("Variation shelf"));
    m_hint->setMargin(space::tight);
    m_hint->setAutoFillBackground(true);
    m_search->installEventFilter(this);

    m_list->setModel(m_model);
    m_list->setItemDelegate(new ShelfDelegate(m_list));
    m_list->setResizeMode(QListView::Adjust);
    m_list->setVerticalScrollMode(QListView::ScrollPerPixel);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    // Rows are as high as their text at the list's width, which a bar that comes and goes changes.
    m_list->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    m_list->setDragEnabled(true);
    m_list->setDragDropMode(QListView::DragOnly);
    m_list->setMouseTracking(true);
    m_list->setAccessibleName(tr("Variations"));
    m_list->installEventFilter(this);
    m_nothing->setAlignment(Qt::AlignTop | Qt::AlignHCenter);
    m_nothing->setMargin(space::group);

    auto *chips = new QGridLayout;
    chips->setSpacing(space::tight);
    m_chips->setExclusive(true);
    fill(this, columnLayout({m_search, chips, m_hint, {m_list, 1}, {m_nothing, 1}}, space::tight));

    const std::pair<QString, std::optional<core::Serves>> styles[] = {{tr("All"), std::nullopt},
        {tr("Soft"), core::Serves::soft}, {tr("Sinking"), core::Serves::sinking},
        {tr("Both"), core::Serves::both}};
    for (int i = 0; const auto &[text, serves] : styles) {
        auto *chip = new QToolButton(this);
        chip->setText(text);
        chip->setCheckable(true);
        chip->setChecked(!serves);
        chip->setToolButtonStyle(serves ? Qt::ToolButtonTextBesideIcon : Qt::ToolButtonTextOnly);
        chip->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
        chip->setToolTip(serves ? tr("Only variations for: %1").arg(core::words(*serves))
                                : tr("Variations for every touch style"));
        chip->setAccessibleName(chip->toolTip());
        m_chips->addButton(chip, serves ? chipId(*serves) : kAllStyles);
        chips->addWidget(chip, i / 2, i % 2);
        ++i;
    }
    paintChips();
    setCardDragged(false);

    connect(m_search, &QLineEdit::textChanged, this, &VariationShelf::refill);
    connect(m_chips, &QButtonGroup::idClicked, this, &VariationShelf::refill);
    connect(m_list, &QListView::doubleClicked, this, &VariationShelf::choose);
}

void VariationShelf::setCatalogue(
    const std::vector<core::Variation> &catalogue, core::TouchStyle style)
{
    if (catalogue == m_catalogue && style == m_style)
        return;
    m_catalogue = catalogue;
    m_style = style;
    refill();
}

void VariationShelf::search(const QString &typed, const QString &goesTo)
{
    showHint(tr("Goes to %1. Enter adds, Escape leaves.").arg(goesTo), false);
    m_search->setText(typed);
    m_search->setFocus();
    if (!m_list->currentIndex().isValid())
        m_list->setCurrentIndex(m_model->firstVariation());
}

void VariationShelf::setCardDragged(bool active)
{
    if (active)
        showHint(tr("Drop the card here to take it off the week."), true);
    else
        showHint(tr("Drag a variation onto a day, or press Insert on the board."), false);
}

void VariationShelf::showHint(const QString &text, bool isRemoval)
{
    const Colours &look = colours(palette());
    QPalette shown = m_hint->palette();
    shown.setColor(QPalette::Window, isRemoval ? look.dangerGround : look.window);
    shown.setColor(QPalette::WindowText, isRemoval ? look.dangerText : look.mutedText);
    m_hint->setPalette(shown);
    m_hint->setText(text);
}

void VariationShelf::paintChips()
{
    for (QAbstractButton *chip : m_chips->buttons())
        if (const int id = m_chips->id(chip); id != kAllStyles)
            chip->setIcon(touchMarkIcon(servesOf(id), palette()));
}

void VariationShelf::refill()
{
    const int id = m_chips->checkedId();
    ShelfFilter filter{m_search->text(), std::nullopt};
    if (id != kAllStyles)
        filter.only = servesOf(id);
    m_model->setRows(shelfRows(m_catalogue, m_style, filter));
    const QModelIndex first = m_model->firstVariation();
    if (!m_search->text().isEmpty())
        m_list->setCurrentIndex(first);
    m_list->setVisible(first.isValid());
    m_nothing->setVisible(!first.isValid());
}

void VariationShelf::step(int by)
{
    for (int row = m_list->currentIndex().row() + by; row >= 0 && row < m_model->rowCount();
         row += by)
        if (const QModelIndex index = m_model->index(row); m_model->row(index).variation) {
            m_list->setCurrentIndex(index);
            return;
        }
}

void VariationShelf::choose()
{
    const QModelIndex index = m_list->currentIndex();
    if (!index.isValid() || !m_model->row(index).variation)
        return;
    const core::VariationId variation = m_model->row(index).variation->id;
    setCardDragged(false);
    m_search->clear();
    Q_EMIT chosen(variation);
}

bool VariationShelf::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    switch (static_cast<QKeyEvent *>(event)->key()) {
    case Qt::Key_Down:
        step(1);
        return true;
    case Qt::Key_Up:
        step(-1);
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        choose();
        return true;
    case Qt::Key_Escape:
        setCardDragged(false);
        m_search->clear();
        Q_EMIT left();
        return true;
    default:
        return QWidget::eventFilter(watched, event);
    }
}

void VariationShelf::dragEnterEvent(QDragEnterEvent *event)
{
    if (std::holds_alternative<core::CardId>(draggedIn(event->mimeData()))) {
        event->setDropAction(Qt::MoveAction);
        event->accept();
    }
}

void VariationShelf::dropEvent(QDropEvent *event)
{
    const Dragged dragged = draggedIn(event->mimeData());
    if (const auto *card = std::get_if<core::CardId>(&dragged)) {
        event->setDropAction(Qt::MoveAction);
        event->accept();
        Q_EMIT cardDropped(*card);
    }
}

void VariationShelf::changeEvent(QEvent *event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) {
        paintChips();
        setCardDragged(false);
    }
}

} // namespace ui
