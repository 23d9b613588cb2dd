/** All of a studio as one file, and back: what is in it, and what is kept of that in whose place it comes. */
package org.frisket.orders.work.backup;
