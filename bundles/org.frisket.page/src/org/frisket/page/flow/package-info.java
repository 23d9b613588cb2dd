/**
 * Words, tables and pictures below each other, on as many pages as they take. Lengths are mm from the upper left corner of a
 * page, y down.
 */
package org.frisket.page.flow;
