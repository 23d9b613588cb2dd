/** What is to be done in the studio today, what became of it, and how a job is made again. */
package org.frisket.orders.work;
