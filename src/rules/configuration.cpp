#include "configuration.hpp"

#include "standing.hpp"

namespace cotter::rules {

Known<Id> configuration_of(const Case& asked, const Item& item)
{
    if (item.role != Role::attachment || !item.model || !yes(item.model->setting_is_configuration) ||
        no(item.model->adjusts))
        return item.configuration;
    const Standing standing = standing_of(asked.question.setting_records);
    return standing.disputed ? std::nullopt : standing.state;
}

} // namespace cotter::rules
