/** What is done at the studio's shelf by people: looking for stock, describing it, changing it and taking that back. */
package org.frisket.material.shelf;
