#!/usr/bin/env bash
# tables.sh SOURCE: docs/data.md lists every table of the repository, with as many rows as it has.
set -u
cd "$1" || exit 1
failed=0 tables=0
while read -r table; do
    tables=$((tables + 1))
    # Remarks stand before the head line and begin with a number sign; no cell of these tables holds a line end.
    rows=$(($(grep -vc '^#' "$table") - 1))
    told=$(awk -F ' *[|] *' -v name="\`$table\`" '$2 == name { print $3 }' docs/data.md)
    if [ "$told" != "$rows" ]; then
        echo "$table has $rows rows; docs/data.md says: ${told:-nothing}"
        failed=1
    fi
done < <(ls climate-data/*.csv core/*/data/*.csv app/*/data/*.csv)
for table in tests/data/*/*; do
    tables=$((tables + 1))
    grep -qF "\`$table\`" docs/data.md || { echo "docs/data.md does not name $table"; failed=1; }
done
echo "$tables tables compared"
[ "$failed" = 0 ] && [ "$tables" -gt 0 ]
