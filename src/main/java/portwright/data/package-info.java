/**
 * Reads the number tables of the product: CSV files in the resources, every row with its source and standing, every
 * table checked when it is read. Numbers taken from a source enter the product here and nowhere else.
 */
package portwright.data;
