#include "ui/look/colours.h"
#include "ui/look/look_style.h"
#include "ui/look/theme.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QSpinBox>
#include <QVBoxLayout>
#include <gmock/gmock.h>

#include <algorithm>
#include <vector>

namespace {

using ui::Scheme;

/// The strongest contrast with the window's colour on the way from the left edge inwards, half way
/// down: what tells where the control is.
double edgeContrast(const QWidget &page, const QWidget &control, const QColor &window)
{
    const QImage image = const_cast<QWidget &>(page).grab().toImage();
    const int y = control.geometry().center().y();
    double strongest = 1.0;
    for (int x = control.x(); x < control.x() + 4; ++x)
        strongest = std::max(strongest, ui::contrastRatio(image.pixelColor(x, y), window));
    return strongest;
}

class Controls : public testing::TestWithParam<Scheme>
{
protected:
    ui::LookStyle style;
    QWidget page;
    QVBoxLayout layout{&page};

    template <class Widget> Widget *add(Widget *widget)
    {
        layout.addWidget(widget);
        return widget;
    }
    void show()
    {
        page.setPalette(ui::paletteFor(GetParam()));
        page.setStyle(&style);
        for (QWidget *child : page.findChildren<QWidget *>())
            child->setStyle(&style);
        page.setAutoFillBackground(true);
        page.resize(300, 400);
        page.show();
        page.setFocus();
    }
};

} // namespace

// WCAG 2.2, SC 1.4.11 (AA): 3:1 for what is needed to make out a control.
TEST_P(Controls, HaveAnEdgeThatCanBeSeen)
{
    const std::vector<QWidget *> controls{add(new QLineEdit), add(new QSpinBox),
        add(new QPushButton), add(new QCheckBox), add(new QRadioButton), add(new QComboBox),
        add(new QPlainTextEdit)};
    show();
    const QColor window = ui::colours(GetParam()).window;
    for (const QWidget *control : controls)
        EXPECT_GE(edgeContrast(page, *control, window), 3.0) << control->metaObject()->className();
}

TEST_P(Controls, ShowWhetherABoxIsChecked)
{
    auto *box = add(new QCheckBox);
    auto *radio = add(new QRadioButton);
    show();
    for (QAbstractButton *button :
        {static_cast<QAbstractButton *>(box), static_cast<QAbstractButton *>(radio)}) {
        const QImage off = button->grab().toImage();
        button->setChecked(true);
        EXPECT_NE(button->grab().toImage(), off);
    }
}

TEST_P(Controls, AreAsTallAsOneAnotherInARow)
{
    auto *edit = add(new QLineEdit);
    auto *spin = add(new QSpinBox);
    auto *combo = add(new QComboBox);
    auto *button = add(new QPushButton(QStringLiteral("Add")));
    show();
    EXPECT_EQ(edit->sizeHint().height(), spin->sizeHint().height());
    EXPECT_EQ(edit->sizeHint().height(), combo->sizeHint().height());
    EXPECT_EQ(edit->sizeHint().height(), button->sizeHint().height());
}

INSTANTIATE_TEST_SUITE_P(Schemes, Controls, testing::Values(Scheme::light, Scheme::dark));
