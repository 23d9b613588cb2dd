/** The tour: five steps on a sample job, told beside the thing they are about. It waits for nothing and blocks nothing. */
package org.frisket.app.internal.tour;
