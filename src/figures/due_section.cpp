#include "due_section.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace cotter::figures {

namespace {

constexpr int columns = 3;
constexpr double label_capital = 3.5, top = 8, narrow_width = 170;
constexpr std::array<const char*, columns> headings{"Attachments, headplates", "Slings, hooks", "Machines, hitches"};
constexpr std::array<const char*, columns> short_headings{"Attachments", "Slings", "Machines"};

std::string without_weekday(const std::string& date) // "Fri 4 Dec"
{
    return date.substr(date.find(' ') + 1);
}

class Drawing {
public:
    Drawing(const std::vector<DueMark>& marks, rules::Day today, double width, double height, const DueReading& reading)
        : marks_{marks}, today_{today}, reading_{reading}, section_{{width, height, {}}, 0}
    {
        narrow_ = width < narrow_width;
        staff_ = narrow_ ? 23 : 30;
        indent_ = narrow_ ? 11.5 : 14.5;
        row_ = narrow_ ? 10.4 : 7.4;
        ground_ = top + std::max(1.0, static_cast<double>(most_above())) * row_ + 2;
        week_ = (height - ground_ - 3) / reading.weeks;
        column_ = (width - staff_) / columns;
    }

    DueSection drawn()
    {
        add_ground();
        add_staff();
        for (int i = 0; i < columns; ++i) {
            const auto& words = narrow_ ? short_headings : headings;
            section_.figure.add(Label{
                {x_of(i) + indent_, capital + 2}, words[static_cast<std::size_t>(i)], Align::left, capital, false});
            add_above(i);
            add_below(i);
        }
        add_left_out();
        return std::move(section_);
    }

private:
    bool is_above(const DueMark& mark) const { return !mark.latest || *mark.latest < today_; }
    double x_of(int column) const { return staff_ + column_ * column; }
    double depth(rules::Day day) const
    {
        return ground_ + static_cast<double>(rules::days_between(today_, day).count()) / 7 * week_;
    }

    long most_above() const
    {
        long most = 0;
        for (int i = 0; i < columns; ++i)
            most = std::max(most, static_cast<long>(std::count_if(marks_.begin(), marks_.end(), [&](const DueMark& m) {
                                return m.column == i && is_above(m);
                            })));
        return std::min(most, 4L);
    }

    void add_ground()
    {
        Figure& f = section_.figure;
        f.add(Line{{0, ground_}, {f.width, ground_}, Pen::thick});
        for (double x = 2; x < f.width; x += 4)
            f.add(Line{{x, ground_ + 2.2}, {x + 2.2, ground_}, Pen::thin});
        f.add(Line{{staff_, 0}, {staff_, f.height}, Pen::thick});
        for (int i = 1; i < columns; ++i)
            f.add(Line{{x_of(i), ground_}, {x_of(i), f.height}, Pen::thin});
        const std::string today = reading_.name_of(today_);
        f.add(Label{{staff_ - 3, ground_ - 2}, narrow_ ? without_weekday(today) : today, Align::right, capital});
    }

    // Weeks from Monday.
    void add_staff()
    {
        const auto weekday = date::weekday{today_}.iso_encoding();
        const rules::Day first = rules::add_days(today_, rules::Days{static_cast<std::int64_t>(8 - weekday)});
        const int every = std::max(1, static_cast<int>(std::ceil((capital + 1.4) / week_)));
        for (int week = 0; week < reading_.weeks; week += every) {
            const rules::Day day = rules::add_days(first, rules::Days{week * 7});
            const double y = depth(day);
            if (y > section_.figure.height - 3 || y < ground_ + 4)
                continue;
            section_.figure.add(Line{{staff_ - 2, y}, {staff_, y}, Pen::thin});
            section_.figure.add(
                Label{{staff_ - 4, y + 1.4}, without_weekday(reading_.name_of(day)), Align::right, capital});
        }
    }

    // On a narrow sheet the date stands under the tag.
    void add_mark(const DueMark& mark, double y)
    {
        const double x = x_of(mark.column) + indent_;
        if (mark.sign)
            section_.figure.add(Mark{{x - 4, y - 1.6}, 6, *mark.sign});
        section_.figure.add(Label{{x, y}, mark.label, Align::left, label_capital, false});
        const double gap = std::max(17.0, text_width(mark.label, label_capital) * 0.85 + 2);
        const Point beside = narrow_ ? Point{x, y + 4.4} : Point{x + gap, y};
        section_.figure.add(Label{beside, mark.date, Align::left, capital});
        if (mark.latest && !is_above(mark))
            add_leader(mark, y - 1.4);
    }

    // From the column's own staff at its date to the label, so that it crosses nothing.
    void add_leader(const DueMark& mark, double label)
    {
        Figure& f = section_.figure;
        const double x = x_of(mark.column), at = depth(*mark.latest), end = x + indent_ - (mark.sign ? 7.4 : 1.5);
        f.add(Line{{x - 1, at}, {x + 1, at}, Pen::thick});
        f.add(Line{{x, at}, {x + 1.5, at}, Pen::thin});
        f.add(Line{{x + 1.5, at}, {x + indent_ - 7.4, label}, Pen::thin});
        f.add(Line{{x + indent_ - 7.4, label}, {end, label}, Pen::thin});
    }

    std::vector<DueMark> in_column(int column, bool above) const
    {
        std::vector<DueMark> found;
        for (const DueMark& each : marks_)
            if (each.column == column && is_above(each) == above)
                found.push_back(each);
        std::stable_sort(found.begin(), found.end(),
                         [](const DueMark& a, const DueMark& b) { return a.latest < b.latest; });
        return found;
    }

    // The nearest to the ground is the longest out of date; the last place counts those that have none.
    void add_above(int column)
    {
        const auto marks = in_column(column, true);
        const double lowest = ground_ - (narrow_ ? 7.4 : 3);
        const auto places = static_cast<std::size_t>((lowest - top - 4) / row_) + 1;
        const std::size_t shown = marks.size() > places ? places - 1 : marks.size();
        double y = lowest;
        for (std::size_t i = 0; i < shown; ++i, y -= row_)
            add_mark(marks[i], y);
        if (shown < marks.size())
            add_mark({reading_.out_too(static_cast<int>(marks.size() - shown)), "", column, {}, Sign::stop}, y);
    }

    // Each hangs at its date, or as near below as its neighbours leave room.
    void add_below(int column)
    {
        double free = ground_ + row_ - 1;
        for (const DueMark& each : in_column(column, false)) {
            const double at = depth(*each.latest);
            const double y = std::max(at + 1.4, free);
            if (y > section_.figure.height - (narrow_ ? 12 : 8)) {
                ++section_.left_out;
                section_.left_out_stops += each.sign == Sign::stop ? 1 : 0;
                continue;
            }
            add_mark(each, y);
            free = y + row_;
        }
    }

    void add_left_out()
    {
        if (section_.left_out > 0)
            section_.figure.add(Label{{section_.figure.width - 3, section_.figure.height - 2.4},
                                      reading_.left_out(section_.left_out, section_.left_out_stops),
                                      Align::right,
                                      capital,
                                      false});
    }

    const std::vector<DueMark>& marks_;
    rules::Day today_;
    const DueReading& reading_;
    bool narrow_ = false;
    double staff_ = 30, indent_ = 0, row_ = 0;
    DueSection section_;
    double ground_ = 0, week_ = 0, column_ = 0;
};

} // namespace

DueSection due_section(const std::vector<DueMark>& marks, rules::Day today, double width, double height,
                       const DueReading& reading)
{
    return Drawing{marks, today, width, height, reading}.drawn();
}

} // namespace cotter::figures
