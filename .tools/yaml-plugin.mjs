/** Lets code import a YAML file as plain data: `import strings from '../../content/data/strings.yaml'`. */
import { parse } from 'yaml';

/** @returns {import('vite').Plugin} */
export function yamlData() {
  return {
    name: 'yaml-data',
    transform: {
      filter: { id: /\.ya?ml$/ },
      handler(source, id) {
        try {
          return { code: `export default ${JSON.stringify(parse(source))};`, map: null };
        } catch (error) {
          throw new Error(`${id}: ${error.message}`, { cause: error });
        }
      },
    },
  };
}
