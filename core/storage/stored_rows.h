#pragma once

#include "core/storage/repositories.h"

/// Where the rows of each kind lie.
namespace core {

template <class Row> struct Stored;

template <> struct Stored<Lifter>
{
    using Repository = LifterRepository;
    static constexpr const char *kTable = "lifter";
};
template <> struct Stored<Variation>
{
    using Repository = VariationRepository;
    static constexpr const char *kTable = "variation";
};
template <> struct Stored<Card>
{
    using Repository = CardRepository;
    static constexpr const char *kTable = "card";
};
template <> struct Stored<LoggedSession>
{
    using Repository = SessionRepository;
    static constexpr const char *kTable = "session";
};
template <> struct Stored<CheckIn>
{
    using Repository = CheckInRepository;
    static constexpr const char *kTable = "check_in";
};
template <> struct Stored<BlockTemplate>
{
    using Repository = TemplateRepository;
    static constexpr const char *kTable = "block_template";
};
template <> struct Stored<Block>
{
    using Repository = BlockRepository;
    static constexpr const char *kTable = "block";
};
template <> struct Stored<Waiver>
{
    using Repository = WaiverRepository;
    static constexpr const char *kTable = "waiver";
};

} // namespace core
