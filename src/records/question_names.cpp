// The words that stand for enumerated values in a question.

#include "question_form.hpp"

#include <set>

namespace cotter::records {

using namespace rules;

template <> const EnumNames<Purpose>& names_of<Purpose>()
{
    static const EnumNames<Purpose> names{
        {"lift", Purpose::lift},       {"use", Purpose::use},
        {"repair", Purpose::repair},   {"examination", Purpose::examination},
        {"return", Purpose::returned}, {"scrap", Purpose::scrap},
    };
    return names;
}

template <> const EnumNames<Role>& names_of<Role>()
{
    static const EnumNames<Role> names{
        {"machine", Role::machine}, {"hitch", Role::hitch}, {"headplate", Role::headplate},
        {"hook", Role::hook},       {"sling", Role::sling}, {"attachment", Role::attachment},
    };
    return names;
}

template <> const EnumNames<ItemClass>& names_of<ItemClass>()
{
    static const EnumNames<ItemClass> names{
        {"accessory", ItemClass::accessory},
        {"machine", ItemClass::machine},
        {"people", ItemClass::people},
        {"undecided", ItemClass::undecided},
    };
    return names;
}

template <> const EnumNames<Owner>& names_of<Owner>()
{
    static const EnumNames<Owner> names{
        {"own", Owner::own},
        {"hired", Owner::hired},
        {"lent", Owner::lent},
        {"cross_hired", Owner::cross_hired},
    };
    return names;
}

template <> const EnumNames<Basis>& names_of<Basis>()
{
    static const EnumNames<Basis> names{
        {"six_months", Basis::six_months},   {"twelve_months", Basis::twelve_months}, {"scheme", Basis::scheme},
        {"exceptional", Basis::exceptional}, {"installation", Basis::installation},
    };
    return names;
}

template <> const EnumNames<Danger>& names_of<Danger>()
{
    static const EnumNames<Danger> names{
        {"present", Danger::present},
        {"could_become", Danger::could_become},
    };
    return names;
}

template <> const EnumNames<Particular>& names_of<Particular>()
{
    static const EnumNames<Particular> names{
        {"given", Particular::given},
        {"not_typed", Particular::not_typed},
        {"lacking", Particular::lacking},
        {"not_applicable", Particular::not_applicable},
    };
    return names;
}

template <> const EnumNames<EventKind>& names_of<EventKind>()
{
    static const EnumNames<EventKind> names{
        {"touch", EventKind::touch},       {"knock", EventKind::knock},
        {"slip", EventKind::slip},         {"drop", EventKind::drop},
        {"overload", EventKind::overload}, {"repair", EventKind::repair},
        {"welding", EventKind::welding},   {"alteration", EventKind::alteration},
        {"accident", EventKind::accident}, {"like_for_like", EventKind::like_for_like},
        {"lay_up", EventKind::lay_up},
    };
    return names;
}

template <> const EnumNames<Answered>& names_of<Answered>()
{
    static const EnumNames<Answered> names{
        {"right", Answered::right},
        {"report", Answered::report},
        {"stop", Answered::stop},
    };
    return names;
}

template <> const EnumNames<SettingKind>& names_of<SettingKind>()
{
    static const EnumNames<SettingKind> names{
        {"changed", SettingKind::changed},
        {"seen", SettingKind::seen},
    };
    return names;
}

template <> const EnumNames<Shape>& names_of<Shape>()
{
    static const EnumNames<Shape> names{
        {"straight", Shape::straight}, {"bend", Shape::bend},   {"junction", Shape::junction},
        {"cut", Shape::cut},           {"other", Shape::other},
    };
    return names;
}

template <> const EnumNames<Sector>& names_of<Sector>()
{
    static const EnumNames<Sector> names{
        {"front", Sector::front},
        {"side", Sector::side},
        {"both", Sector::both},
    };
    return names;
}

template <> const EnumNames<Mounting>& names_of<Mounting>()
{
    static const EnumNames<Mounting> names{
        {"free", Mounting::free},
        {"rigid", Mounting::rigid},
    };
    return names;
}

template <> const EnumNames<Listed>& names_of<Listed>()
{
    static const EnumNames<Listed> names{
        {"listed", Listed::listed},
        {"missing", Listed::missing},
        {"not_applicable", Listed::not_applicable},
    };
    return names;
}

template <> const EnumNames<NoticeKind>& names_of<NoticeKind>()
{
    static const EnumNames<NoticeKind> names{
        {"back", NoticeKind::back},
        {"jump", NoticeKind::jump},
    };
    return names;
}

template <> const EnumNames<How>& names_of<How>()
{
    static const EnumNames<How> names{
        {"phone", How::phone},
        {"pin", How::pin},
    };
    return names;
}

template <> const EnumNames<StaledBy>& names_of<StaledBy>()
{
    static const EnumNames<StaledBy> names{
        {"coupling", StaledBy::coupling},
        {"setting", StaledBy::setting},
    };
    return names;
}

} // namespace cotter::records
