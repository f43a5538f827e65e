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

bool means(BoardAct act, const std::optional<BoardCommand> &command)
{
    return command && command->act == act;
}

} // namespace

TEST(BoardKeys, ArrowsGoAndWithAltTheCardComesAlong)
{
    EXPECT_TRUE(means(BoardAct::go, pressed(Qt::Key_Left)));
    EXPECT_TRUE(means(BoardAct::moveCard, pressed(Qt::Key_Down, Qt::AltModifier)));
    EXPECT_FALSE(pressed(Qt::Key_Down, Qt::ControlModifier));
}

TEST(BoardKeys, TypingBeginsTheSetsWithWhatWasTyped)
{
    const auto command = pressed(Qt::Key_4, Qt::NoModifier, QStringLiteral("4"));
    ASSERT_TRUE(means(BoardAct::editSets, command));
    EXPECT_EQ(command->typed, QStringLiteral("4"));
    EXPECT_TRUE(pressed(Qt::Key_Return)->typed.isEmpty());
    EXPECT_TRUE(pressed(Qt::Key_F2)->typed.isEmpty());
}

TEST(BoardKeys, EachGestureHasItsKey)
{
    EXPECT_TRUE(means(BoardAct::removeCard, pressed(Qt::Key_Delete)));
    EXPECT_TRUE(means(BoardAct::addCard, pressed(Qt::Key_Insert)));
    EXPECT_TRUE(
        means(BoardAct::addCard, pressed(Qt::Key_Plus, Qt::ShiftModifier, QStringLiteral("+"))));
    EXPECT_TRUE(means(BoardAct::duplicateCard, pressed(Qt::Key_D, Qt::ControlModifier)));
    EXPECT_TRUE(means(BoardAct::extend, pressed(Qt::Key_Up, Qt::ShiftModifier)));
    EXPECT_TRUE(means(BoardAct::copy, pressed(Qt::Key_C, Qt::ControlModifier)));
    EXPECT_TRUE(means(BoardAct::cut, pressed(Qt::Key_X, Qt::ControlModifier)));
    EXPECT_TRUE(means(BoardAct::paste, pressed(Qt::Key_V, Qt::ControlModifier)));
    const auto dayKeys = Qt::ControlModifier | Qt::AltModifier;
    EXPECT_TRUE(means(BoardAct::copyDay, pressed(Qt::Key_C, dayKeys)));
    EXPECT_TRUE(means(BoardAct::pasteDay, pressed(Qt::Key_V, dayKeys)));
    EXPECT_TRUE(means(BoardAct::pasteOntoLifters, pressed(Qt::Key_M, dayKeys)));
    EXPECT_TRUE(means(BoardAct::chooseAll, pressed(Qt::Key_A, Qt::ControlModifier)));
    EXPECT_TRUE(means(BoardAct::chooseNone, pressed(Qt::Key_Escape)));
    EXPECT_TRUE(means(BoardAct::editNote, pressed(Qt::Key_F2, Qt::ShiftModifier)));
}

TEST(BoardKeys, OtherKeysAreSomebodyElses)
{
    EXPECT_FALSE(pressed(Qt::Key_Z, Qt::ControlModifier, QStringLiteral("\x1a")));
    EXPECT_FALSE(pressed(Qt::Key_F, Qt::AltModifier, QStringLiteral("f")));
    EXPECT_FALSE(pressed(Qt::Key_Space, Qt::NoModifier, QStringLiteral(" ")));
    EXPECT_FALSE(pressed(Qt::Key_F5));
}
