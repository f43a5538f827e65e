#include "ui/look/desktop_scheme.h"

#include <QtDBus/QDBusConnection>
#include <QtDBus/QDBusMessage>
#include <QtDBus/QDBusVariant>

namespace ui {

namespace {

const QString kService = QStringLiteral("org.freedesktop.portal.Desktop");
const QString kPath = QStringLiteral("/org/freedesktop/portal/desktop");
const QString kInterface = QStringLiteral("org.freedesktop.portal.Settings");

constexpr int kPatienceMs = 300; ///< a window must not wait for a portal that hangs

bool haveBus()
{
    // Without the address a connection attempt may start a bus of its own.
    return qEnvironmentVariableIsSet("DBUS_SESSION_BUS_ADDRESS")
        && QDBusConnection::sessionBus().isConnected();
}

QVariant unwrapped(QVariant value)
{
    while (value.canConvert<QDBusVariant>())
        value = value.value<QDBusVariant>().variant();
    return value;
}

} // namespace

std::optional<Scheme> desktopScheme()
{
    if (!haveBus())
        return std::nullopt;
    QDBusMessage ask =
        QDBusMessage::createMethodCall(kService, kPath, kInterface, QStringLiteral("Read"));
    ask << QStringLiteral("org.freedesktop.appearance") << QStringLiteral("color-scheme");
    const QDBusMessage answer = QDBusConnection::sessionBus().call(ask, QDBus::Block, kPatienceMs);
    if (answer.type() != QDBusMessage::ReplyMessage || answer.arguments().isEmpty())
        return std::nullopt;
    switch (unwrapped(answer.arguments().constFirst()).toUInt()) {
    case 1:
        return Scheme::dark;
    case 2:
        return Scheme::light;
    default:
        return std::nullopt;
    }
}

void watchDesktopScheme(QObject *receiver, const char *slot)
{
    if (haveBus())
        QDBusConnection::sessionBus().connect(
            kService, kPath, kInterface, QStringLiteral("SettingChanged"), receiver, slot);
}

} // namespace ui
