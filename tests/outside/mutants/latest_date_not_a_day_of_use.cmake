# An examination is out of date on its own latest date already.
set(file row_exam.cpp)
set(text [[if (asked.today > *paper.latest) {]])
set(replacement [[if (asked.today >= *paper.latest) {]])
