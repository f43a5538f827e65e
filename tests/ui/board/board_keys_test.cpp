#include "ui/board/board_keys.h"

#include <QKeyEvent>
#include <gmock/gmock.h>

using namespace ui;

namespace {

std::optional<BoardCommand> pressed(
    int key, Qt::KeyboardModifiers held = Qt::NoModifier, const QString &text = {})
{
    return boardCommand(QKeyEvent(QEvent::KeyPress, key, held, text));
}

template <class Command> bool means(const std::optional<BoardCommand> &command)
{
    return command && std::holds_alternative<Command>(*command);
}

} // namespace

TEST(BoardKeys, ArrowsGoAndWithAltTheCardComesAlong)
{
    EXPECT_TRUE(means<GoTo>(pressed(Qt::Key_Left)));
    EXPECT_TRUE(means<MoveCardTo>(pressed(Qt::Key_Down, Qt::AltModifier)));
    EXPECT_FALSE(pressed(Qt::Key_Down, Qt::ControlModifier));
}

TEST(BoardKeys, TypingBeginsTheSetsWithWhatWasTyped)
{
    const auto command = pressed(Qt::Key_4, Qt::NoModifier, QStringLiteral("4"));
    ASSERT_TRUE(means<EditSets>(command));
    EXPECT_EQ(std::get<EditSets>(*command).typed, QStringLiteral("4"));
    EXPECT_TRUE(std::get<EditSets>(*pressed(Qt::Key_Return)).typed.isEmpty());
    EXPECT_TRUE(std::get<EditSets>(*pressed(Qt::Key_F2)).typed.isEmpty());
}

TEST(BoardKeys, EachGestureHasItsKey)
{
    EXPECT_TRUE(means<RemoveCard>(pressed(Qt::Key_Delete)));
    EXPECT_TRUE(means<AddCard>(pressed(Qt::Key_Insert)));
    EXPECT_TRUE(means<AddCard>(pressed(Qt::Key_Plus, Qt::ShiftModifier, QStringLiteral("+"))));
    EXPECT_TRUE(means<DuplicateCard>(pressed(Qt::Key_D, Qt::ControlModifier)));
    EXPECT_TRUE(means<ExtendTo>(pressed(Qt::Key_Up, Qt::ShiftModifier)));
    EXPECT_TRUE(means<CopyCards>(pressed(Qt::Key_C, Qt::ControlModifier)));
    EXPECT_TRUE(means<CutCards>(pressed(Qt::Key_X, Qt::ControlModifier)));
    EXPECT_TRUE(means<PasteCards>(pressed(Qt::Key_V, Qt::ControlModifier)));
    EXPECT_TRUE(means<ChooseAll>(pressed(Qt::Key_A, Qt::ControlModifier)));
    EXPECT_TRUE(means<ChooseNone>(pressed(Qt::Key_Escape)));
    EXPECT_TRUE(means<EditNote>(pressed(Qt::Key_F2, Qt::ShiftModifier)));
}

TEST(BoardKeys, OtherKeysAreSomebodyElses)
{
    EXPECT_FALSE(pressed(Qt::Key_Z, Qt::ControlModifier, QStringLiteral("\x1a")));
    EXPECT_FALSE(pressed(Qt::Key_F, Qt::AltModifier, QStringLiteral("f")));
    EXPECT_FALSE(pressed(Qt::Key_Space, Qt::NoModifier, QStringLiteral(" ")));
    EXPECT_FALSE(pressed(Qt::Key_F5));
}
