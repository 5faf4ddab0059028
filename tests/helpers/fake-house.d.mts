import type { House } from '../../bot/house.ts';

export declare const fakeHouse: (storeUrl: string) => Promise<House>;
