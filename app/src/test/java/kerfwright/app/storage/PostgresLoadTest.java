package kerfwright.app.storage;

class PostgresLoadTest extends LoadContractTest {
  private String url;

  @Override
  Database open() throws Exception {
    url = PostgresOfTests.newDatabase();
    return again();
  }

  @Override
  Database again() throws Exception {
    return Database.server(url);
  }
}
