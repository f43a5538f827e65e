#include "core/csv/problem.h"

#include <algorithm>

namespace core {

void ProblemList::add(Problem problem)
{
    ++m_count;
    if (m_items.size() < kKept)
        m_items.push_back(std::move(problem));
}

void ProblemList::add(const ProblemList &others)
{
    for (const Problem &problem : others.m_items)
        add(problem);
    m_count += others.m_count - others.m_items.size();
}

void ProblemList::sortByLine()
{
    std::ranges::stable_sort(
        m_items, [](const Problem &a, const Problem &b) { return a.line < b.line; });
}

QString oneLine(const Problem &problem)
{
    QString text = problem.file + u':';
    if (problem.line > 0)
        text += QString::number(problem.line) + u':';
    if (!problem.field.isEmpty())
        text += u' ' + problem.field + u':';
    text += u' ' + problem.words;
    if (!problem.remedy.isEmpty())
        text += u' ' + problem.remedy;
    return text;
}

} // namespace core
