import { cleanup } from '@testing-library/react';
import { afterEach } from 'vitest';

// Testing Library does this by itself only where `afterEach` is global.
afterEach(cleanup);
