package kerfwright.app.storage;

class PostgresRecordTest extends RecordContractTest {
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
