#include <QApplication>
#include <gmock/gmock.h>

/// One application for all tests of a program; offscreen unless the caller says otherwise.
int main(int argc, char **argv)
{
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    testing::InitGoogleMock(&argc, argv);
    const QApplication app(argc, argv);
    return RUN_ALL_TESTS();
}
