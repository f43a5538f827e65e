#pragma once

#include <QString>
#include <vector>

namespace core {

/// One thing wrong in a file, for the one who has to mend it.
struct Problem
{
    QString file;   ///< as the user named it
    int line = 0;   ///< counted from 1; 0 = the file as a whole
    QString field;  ///< column name; empty = the whole line
    QString words;  ///< what is wrong
    QString remedy; ///< what to do about it

    friend bool operator==(const Problem &, const Problem &) = default;
};

/// All problems of an import, counted to the last. Only the first kKept are held, so that a file of
/// another kind, where every line is wrong, costs no memory.
class ProblemList
{
public:
    static constexpr size_t kKept = 10'000;

    void add(Problem problem);
    void add(const ProblemList &others);

    [[nodiscard]] bool isEmpty() const { return m_count == 0; }
    [[nodiscard]] size_t count() const { return m_count; }
    [[nodiscard]] const std::vector<Problem> &items() const { return m_items; }
    void sortByLine(); ///< for the problems of one file

private:
    std::vector<Problem> m_items;
    size_t m_count = 0;
};

/// "log.csv:12: rpe: what is wrong; what to do", the form that editors and terminals link.
[[nodiscard]] QString oneLine(const Problem &problem);

} // namespace core
