#include "due_section.hpp"

#include "amounts.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace cotter::figures {

namespace {

constexpr int columns = 3, weeks = 12;
constexpr double staff = 30, row = 7.4, capital = 2.8, label_capital = 3.5, top = 8;
constexpr std::array<const char*, columns> headings{"Attachments, headplates", "Slings, hooks", "Machines, hitches"};

class Drawing {
public:
    Drawing(const std::vector<DueMark>& marks, rules::Day today, double width, double height)
        : marks_{marks}, today_{today}, section_{{width, height, {}}, 0}
    {
        ground_ = top + std::max(1.0, static_cast<double>(most_above())) * row + 2;
        week_ = (height - ground_ - 3) / weeks;
        column_ = (width - staff) / columns;
    }

    DueSection drawn()
    {
        add_ground();
        add_staff();
        for (int i = 0; i < columns; ++i) {
            section_.figure.add(Label{{x_of(i) + 8, capital + 2}, headings[static_cast<std::size_t>(i)], Align::left, capital, false});
            add_above(i);
            add_below(i);
        }
        return std::move(section_);
    }

private:
    bool is_above(const DueMark& mark) const { return !mark.latest || *mark.latest < today_; }
    double x_of(int column) const { return staff + column_ * column; }
    double depth(rules::Day day) const { return ground_ + static_cast<double>(rules::days_between(today_, day).count()) / 7 * week_; }

    long most_above() const
    {
        long most = 0;
        for (int i = 0; i < columns; ++i)
            most = std::max(most, static_cast<long>(std::count_if(marks_.begin(), marks_.end(), [&](const DueMark& m) { return m.column == i && is_above(m); })));
        return std::min(most, 3L);
    }

    void add_ground()
    {
        Figure& f = section_.figure;
        f.add(Line{{0, ground_}, {f.width, ground_}, Pen::thick});
        for (double x = 2; x < f.width; x += 4)
            f.add(Line{{x, ground_ + 2.2}, {x + 2.2, ground_}, Pen::thin});
        f.add(Line{{staff, 0}, {staff, f.height}, Pen::thick});
        f.add(Label{{staff - 3, ground_ - 2}, words::short_day(today_), Align::right, capital});
    }

    // Weeks from Monday.
    void add_staff()
    {
        const auto weekday = date::weekday{today_}.iso_encoding();
        const rules::Day first = rules::add_days(today_, rules::Days{static_cast<std::int64_t>(8 - weekday)});
        for (int week = 0; week < weeks; ++week) {
            const rules::Day day = rules::add_days(first, rules::Days{week * 7});
            const double y = depth(day);
            if (y > section_.figure.height - 3 || y < ground_ + 4)
                continue;
            section_.figure.add(Line{{staff - 2, y}, {staff, y}, Pen::thin});
            const std::string text = words::short_day(day);
            section_.figure.add(Label{{staff - 4, y + 1.4}, text.substr(text.find(' ') + 1), Align::right, capital});
        }
    }

    void add_mark(const DueMark& mark, double y)
    {
        const double x = x_of(mark.column) + 8;
        if (mark.sign)
            section_.figure.add(Mark{{x - 4, y - 1.6}, 6, *mark.sign});
        section_.figure.add(Label{{x, y}, mark.label, Align::left, label_capital, false});
        section_.figure.add(Label{{x + std::max(17.0, text_width(mark.label, label_capital) * 0.85 + 2), y}, mark.date, Align::left, capital});
    }

    std::vector<DueMark> in_column(int column, bool above) const
    {
        std::vector<DueMark> found;
        for (const DueMark& each : marks_)
            if (each.column == column && is_above(each) == above)
                found.push_back(each);
        std::stable_sort(found.begin(), found.end(), [](const DueMark& a, const DueMark& b) { return a.latest < b.latest; });
        return found;
    }

    void add_above(int column)
    {
        const auto marks = in_column(column, true);
        double y = ground_ - 3;
        for (const DueMark& each : marks) {
            if (y < top + row - 1) {
                ++section_.left_out;
                continue;
            }
            add_mark(each, y);
            y -= row;
        }
    }

    // Each hangs at its date, or as near below as its neighbours leave room; the leader keeps left of the labels.
    void add_below(int column)
    {
        double free = ground_ + row - 1;
        for (const DueMark& each : in_column(column, false)) {
            const double at = depth(*each.latest);
            const double y = std::max(at + 1.4, free);
            if (y > section_.figure.height - 2) {
                ++section_.left_out;
                continue;
            }
            add_mark(each, y);
            const double end = x_of(column) + (each.sign ? 0 : 6);
            section_.figure.add(Line{{staff - 1, at}, {staff + 1.5, at}, Pen::thick});
            if (column == 0)
                section_.figure.add(Line{{staff, at}, {end, y - 1.4}, Pen::thin});
            else
                section_.figure.add(Line{{end - 4, y - 1.4}, {end, y - 1.4}, Pen::thin});
            free = y + row;
        }
    }

    const std::vector<DueMark>& marks_;
    rules::Day today_;
    DueSection section_;
    double ground_ = 0, week_ = 0, column_ = 0;
};

} // namespace

DueSection due_section(const std::vector<DueMark>& marks, rules::Day today, double width, double height)
{
    return Drawing{marks, today, width, height}.drawn();
}

} // namespace cotter::figures
