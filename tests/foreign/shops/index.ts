export { type ForeignShop, type ForeignWeld, shop } from './shop.js';
