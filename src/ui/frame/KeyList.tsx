import { KEY_TABLE } from './keyTable.ts';
import { Popover } from './Popover.tsx';

/** The list of keys, under a button that “?” presses too. */
export function KeyList() {
  return (
    <Popover face="Keys" label="Keys" className="frame-button header-keys" mark="keys">
      {() => (
        <table className="key-table">
          <caption className="unseen">Keys</caption>
          <tbody>
            {KEY_TABLE.map(({ keys, does }) => (
              <tr key={keys}>
                <th scope="row">{keys}</th>
                <td>{does}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </Popover>
  );
}
