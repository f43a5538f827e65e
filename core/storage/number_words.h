#pragma once

#include <QString>
#include <QStringList>
#include <vector>

/// Short lists of whole numbers in a column, with spaces between.
namespace core {

inline QString wordsOf(const std::vector<int> &numbers)
{
    QStringList words;
    for (const int number : numbers)
        words << QString::number(number);
    return words.join(u' ');
}

inline std::vector<int> numbersOf(const QString &words)
{
    std::vector<int> numbers;
    for (const QString &word : words.split(u' ', Qt::SkipEmptyParts))
        numbers.push_back(word.toInt());
    return numbers;
}

} // namespace core
