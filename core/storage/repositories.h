#pragma once

#include "core/domain/edit.h"

#include <optional>
#include <vector>

/// One repository a kind of row: its SQL and nothing else. Each offers
///     find(id)       the row as it is in the file
///     insert(row)    adds the row with its parts
///     remove(id)     takes it out with its parts
///     describe(row)  names it in an error: "Card 2 of Ann on 2024-05-01"
/// and the reads that the program needs. Rows that others refer to are updated in place:
///     release(id)    frees what is unique about it, so that two rows may swap names
///     update(row)    writes a released row anew
/// All throw StorageError; none opens a transaction.
namespace core {

class Database;

class LifterRepository
{
public:
    explicit LifterRepository(Database &db)
        : m_db(db)
    {
    }
    [[nodiscard]] std::vector<Lifter> all(); ///< by name
    [[nodiscard]] std::optional<Lifter> find(LifterId id);
    void insert(const Lifter &lifter);
    void remove(LifterId id);
    void release(LifterId id);
    void update(const Lifter &lifter);
    [[nodiscard]] QString describe(const Lifter &lifter);

private:
    /// All, or the one with `id` where that is valid; in no order.
    [[nodiscard]] std::vector<Lifter> read(LifterId id = {});
    void insertParts(const Lifter &lifter);
    void refuseTakenName(const Lifter &lifter);

    Database &m_db;
};

class VariationRepository
{
public:
    explicit VariationRepository(Database &db)
        : m_db(db)
    {
    }
    [[nodiscard]] std::vector<Variation> all(); ///< by id, which is catalogue order
    [[nodiscard]] std::optional<Variation> find(VariationId id);
    void insert(const Variation &variation);
    void remove(VariationId id);
    void release(VariationId id);
    void update(const Variation &variation);
    [[nodiscard]] QString describe(const Variation &variation);

private:
    void refuseTaken(const Variation &variation);

    Database &m_db;
};

class CardRepository
{
public:
    explicit CardRepository(Database &db)
        : m_db(db)
    {
    }
    [[nodiscard]] std::vector<Card> between(LifterId lifter, QDate from, QDate to);
    /// Of the whole roster, by lifter, day and position.
    [[nodiscard]] std::vector<Card> between(QDate from, QDate to);
    [[nodiscard]] std::optional<Card> find(CardId id);
    void insert(const Card &card);
    void remove(CardId id);
    [[nodiscard]] QString describe(const Card &card);

private:
    Database &m_db;
};

class SessionRepository
{
public:
    explicit SessionRepository(Database &db)
        : m_db(db)
    {
    }
    [[nodiscard]] std::vector<LoggedSession> of(LifterId lifter);
    [[nodiscard]] std::vector<LoggedSession> all();
    [[nodiscard]] std::optional<LoggedSession> find(SessionId id);
    void insert(const LoggedSession &session);
    void remove(SessionId id);
    [[nodiscard]] QString describe(const LoggedSession &session);

private:
    Database &m_db;
};

class CheckInRepository
{
public:
    explicit CheckInRepository(Database &db)
        : m_db(db)
    {
    }
    [[nodiscard]] std::vector<CheckIn> of(LifterId lifter); ///< by day
    [[nodiscard]] std::vector<CheckIn> all();               ///< by lifter and day
    [[nodiscard]] std::optional<CheckIn> find(CheckInId id);
    void insert(const CheckIn &row);
    void remove(CheckInId id);
    [[nodiscard]] QString describe(const CheckIn &row);

private:
    Database &m_db;
};

class TemplateRepository
{
public:
    explicit TemplateRepository(Database &db)
        : m_db(db)
    {
    }
    [[nodiscard]] std::vector<BlockTemplate> all(); ///< by name and version
    [[nodiscard]] std::optional<BlockTemplate> find(TemplateId id);
    void insert(const BlockTemplate &row);
    void remove(TemplateId id);
    [[nodiscard]] QString describe(const BlockTemplate &row);

private:
    Database &m_db;
};

class BlockRepository
{
public:
    explicit BlockRepository(Database &db)
        : m_db(db)
    {
    }
    [[nodiscard]] std::vector<Block> of(LifterId lifter); ///< by start
    [[nodiscard]] std::vector<Block> all();               ///< by lifter and start
    [[nodiscard]] std::optional<Block> find(BlockId id);
    void insert(const Block &row);
    void remove(BlockId id);
    [[nodiscard]] QString describe(const Block &row);

private:
    Database &m_db;
};

class WaiverRepository
{
public:
    explicit WaiverRepository(Database &db)
        : m_db(db)
    {
    }
    [[nodiscard]] std::vector<Waiver> of(LifterId lifter);
    [[nodiscard]] std::optional<Waiver> find(WaiverId id);
    void insert(const Waiver &row);
    void remove(WaiverId id);
    [[nodiscard]] QString describe(const Waiver &row);

private:
    Database &m_db;
};

} // namespace core
