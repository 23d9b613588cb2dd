/** What the features of a job and their values are called. */
package org.frisket.orders.internal.features;
