#include <gmock/gmock.h>

/// For programs whose tests need no application.
int main(int argc, char **argv)
{
    testing::InitGoogleMock(&argc, argv);
    return RUN_ALL_TESTS();
}
