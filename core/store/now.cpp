#include "store/now.h"

#include <QtCore/QDateTime>

namespace store {

std::string utc_now() { return QDateTime::currentDateTimeUtc().toString(Qt::ISODate).toStdString(); }

}  // namespace store
