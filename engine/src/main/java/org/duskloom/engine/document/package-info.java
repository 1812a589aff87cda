/**
 * Input files as located text: strict decoding of UTF-8, a tree of JSON values and a table of CSV cells in which
 * everything knows its {@code file:line:column}, and the binding of one object's fields. Lines and columns count from
 * 1, columns in Unicode code points; offsets count UTF-16 units from 0. Knows no meaning of any field. Uses only {@code
 * problem}; the readers of maps, displays and timelines are built on it. Jackson is used in {@link
 * org.duskloom.engine.document.JsonReader} only, Commons CSV in {@link org.duskloom.engine.document.CsvReader} only.
 */
package org.duskloom.engine.document;
