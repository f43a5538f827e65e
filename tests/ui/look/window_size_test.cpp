#include "ui/look/form_dialog.h"
#include "ui/look/form_parts.h"
#include "ui/look/scrolling_room.h"

#include <QApplication>
#include <QLineEdit>
#include <QScreen>
#include <QScrollBar>
#include <gtest/gtest.h>

namespace {

constexpr int kFields = 8;

/// Fills its page after it was laid out, as a dialog does whose fields go by other fields.
class LateForm : public ui::FormDialog
{
public:
    LateForm()
    {
        auto *fields = new QVBoxLayout;
        layOut(ui::columnLayout({fields}), new QWidget);
        for (int i = 0; i < kFields; ++i)
            fields->addWidget(new QLineEdit);
    }
};

} // namespace

TEST(FormDialog, OpensAsHighAsWhatIsFilledInAfterItsLayout)
{
    LateForm form;
    form.show();
    QApplication::processEvents();
    const auto *room = form.findChild<ui::ScrollingRoom *>();
    EXPECT_EQ(room->verticalScrollBar()->maximum(), 0);
    EXPECT_EQ(room->horizontalScrollBar()->maximum(), 0);
    // Where it was made another size it keeps that when it is opened again.
    form.resize(form.width(), form.height() + 30);
    const QSize size = form.size();
    form.hide();
    form.show();
    EXPECT_EQ(form.size(), size);
}

TEST(KeepOnScreen, MakesAWindowOfALargerScreenSmallerAndMovesItOn)
{
    QWidget window;
    const QRect screen = window.screen()->availableGeometry();
    window.resize(screen.size() * 2);
    window.move(screen.topLeft() + QPoint(screen.width() / 2, -40));
    ui::keepOnScreen(window);
    EXPECT_TRUE(screen.contains(window.geometry()))
        << window.width() << " x " << window.height() << " at " << window.x() << ", " << window.y();
    window.setGeometry(10, 20, 200, 100);
    ui::keepOnScreen(window);
    EXPECT_EQ(window.geometry(), QRect(10, 20, 200, 100)) << "one that fits stays";
}
