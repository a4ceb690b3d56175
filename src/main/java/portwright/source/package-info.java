/**
 * Where a number comes from and how far it can be trusted. Only plain records and enums live here; this package
 * imports nothing of the product.
 */
package portwright.source;
