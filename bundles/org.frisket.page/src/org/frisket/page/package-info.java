/**
 * Pages of paper that are painted in millimetres, y down, and come out as PDF or as pictures. What stands on a page does
 * not know which of the two it becomes.
 */
package org.frisket.page;
