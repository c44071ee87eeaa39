BEGIN TRANSACTION;
CREATE TABLE airbrush (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	name TEXT NOT NULL, 
	load_minutes INTEGER NOT NULL, 
	change_same_family INTEGER NOT NULL, 
	change_other_family INTEGER NOT NULL, 
	clean_minutes INTEGER NOT NULL, 
	idle_limit_minutes INTEGER NOT NULL, 
	CONSTRAINT pk_airbrush PRIMARY KEY (id), 
	CONSTRAINT fk_airbrush_parent FOREIGN KEY(parent) REFERENCES gear (id) ON DELETE CASCADE
);
INSERT INTO "airbrush" VALUES(128,127,0,'airbrush',3,6,10,6,20);
CREATE TABLE alembic_version (
	version_num VARCHAR(32) NOT NULL, 
	CONSTRAINT alembic_version_pkc PRIMARY KEY (version_num)
);
INSERT INTO "alembic_version" VALUES('0001');
CREATE TABLE application (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	coating TEXT NOT NULL, 
	coats INTEGER NOT NULL, 
	CONSTRAINT pk_application PRIMARY KEY (id), 
	CONSTRAINT fk_application_parent FOREIGN KEY(parent) REFERENCES step (id) ON DELETE CASCADE
);
INSERT INTO "application" VALUES(144,143,0,'lacquer primer, pale grey',1);
INSERT INTO "application" VALUES(154,153,0,'waterborne acrylic, skin, warm',2);
INSERT INTO "application" VALUES(157,156,0,'waterborne acrylic, night blue',2);
INSERT INTO "application" VALUES(160,159,0,'waterborne acrylic, moss green',1);
INSERT INTO "application" VALUES(163,162,0,'leather tone, 1 : 1',1);
INSERT INTO "application" VALUES(166,165,0,'waterborne acrylic, dark grey',1);
INSERT INTO "application" VALUES(169,168,0,'waterborne acrylic, stone grey',1);
INSERT INTO "application" VALUES(172,171,0,'waterborne acrylic, dark grey',1);
INSERT INTO "application" VALUES(175,174,0,'sepia wash, 2 : 3',1);
INSERT INTO "application" VALUES(182,181,0,'night blue highlight, 2 : 3',1);
INSERT INTO "application" VALUES(185,184,0,'skin highlight, 2 : 3',1);
INSERT INTO "application" VALUES(188,187,0,'waterborne acrylic, ivory',1);
INSERT INTO "application" VALUES(191,190,0,'waterborne acrylic, lamp yellow',2);
INSERT INTO "application" VALUES(194,193,0,'cyanoacrylate glue',1);
INSERT INTO "application" VALUES(198,197,0,'matte clear, waterborne',1);
INSERT INTO "application" VALUES(207,206,0,'gloss clear, waterborne',1);
CREATE TABLE application_place (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_application_place PRIMARY KEY (id), 
	CONSTRAINT fk_application_place_parent FOREIGN KEY(parent) REFERENCES application (id) ON DELETE CASCADE
);
INSERT INTO "application_place" VALUES(145,144,0,'figure/face and hands');
INSERT INTO "application_place" VALUES(146,144,1,'figure/coat');
INSERT INTO "application_place" VALUES(147,144,2,'figure/trousers');
INSERT INTO "application_place" VALUES(148,144,3,'figure/boots and satchel');
INSERT INTO "application_place" VALUES(149,144,4,'figure/pole and lantern');
INSERT INTO "application_place" VALUES(150,144,5,'figure/lantern glass');
INSERT INTO "application_place" VALUES(151,144,6,'plinth/cobbles');
INSERT INTO "application_place" VALUES(152,144,7,'plinth/rim');
INSERT INTO "application_place" VALUES(155,154,0,'figure/face and hands');
INSERT INTO "application_place" VALUES(158,157,0,'figure/coat');
INSERT INTO "application_place" VALUES(161,160,0,'figure/trousers');
INSERT INTO "application_place" VALUES(164,163,0,'figure/boots and satchel');
INSERT INTO "application_place" VALUES(167,166,0,'figure/pole and lantern');
INSERT INTO "application_place" VALUES(170,169,0,'plinth/cobbles');
INSERT INTO "application_place" VALUES(173,172,0,'plinth/rim');
INSERT INTO "application_place" VALUES(176,175,0,'figure/face and hands');
INSERT INTO "application_place" VALUES(177,175,1,'figure/coat');
INSERT INTO "application_place" VALUES(178,175,2,'figure/trousers');
INSERT INTO "application_place" VALUES(179,175,3,'figure/boots and satchel');
INSERT INTO "application_place" VALUES(180,175,4,'plinth/cobbles');
INSERT INTO "application_place" VALUES(183,182,0,'figure/coat');
INSERT INTO "application_place" VALUES(186,185,0,'figure/face and hands');
INSERT INTO "application_place" VALUES(189,188,0,'plinth/cobbles');
INSERT INTO "application_place" VALUES(192,191,0,'figure/lantern glass');
INSERT INTO "application_place" VALUES(195,194,0,'figure/soles');
INSERT INTO "application_place" VALUES(196,194,1,'plinth/standing spots');
INSERT INTO "application_place" VALUES(199,198,0,'figure/face and hands');
INSERT INTO "application_place" VALUES(200,198,1,'figure/coat');
INSERT INTO "application_place" VALUES(201,198,2,'figure/trousers');
INSERT INTO "application_place" VALUES(202,198,3,'figure/boots and satchel');
INSERT INTO "application_place" VALUES(203,198,4,'figure/pole and lantern');
INSERT INTO "application_place" VALUES(204,198,5,'plinth/cobbles');
INSERT INTO "application_place" VALUES(205,198,6,'plinth/rim');
INSERT INTO "application_place" VALUES(208,207,0,'figure/lantern glass');
CREATE TABLE bench_daylight (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	rule TEXT NOT NULL, 
	since TEXT NOT NULL, 
	start TEXT NOT NULL, 
	"end" TEXT NOT NULL, 
	people INTEGER NOT NULL, 
	CONSTRAINT pk_bench_daylight PRIMARY KEY (id), 
	CONSTRAINT fk_bench_daylight_parent FOREIGN KEY(parent) REFERENCES bench_time (id) ON DELETE CASCADE
);
CREATE TABLE bench_extra (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	start TEXT NOT NULL, 
	"end" TEXT NOT NULL, 
	people INTEGER NOT NULL, 
	CONSTRAINT pk_bench_extra PRIMARY KEY (id), 
	CONSTRAINT fk_bench_extra_parent FOREIGN KEY(parent) REFERENCES bench_time (id) ON DELETE CASCADE
);
CREATE TABLE bench_quiet (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	rule TEXT NOT NULL, 
	since TEXT NOT NULL, 
	start TEXT NOT NULL, 
	"end" TEXT NOT NULL, 
	people INTEGER NOT NULL, 
	CONSTRAINT pk_bench_quiet PRIMARY KEY (id), 
	CONSTRAINT fk_bench_quiet_parent FOREIGN KEY(parent) REFERENCES bench_time (id) ON DELETE CASCADE
);
INSERT INTO "bench_quiet" VALUES(126,123,0,'FREQ=DAILY','2026-02-28','22:00','07:00',1);
CREATE TABLE bench_skipped (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_bench_skipped PRIMARY KEY (id), 
	CONSTRAINT fk_bench_skipped_parent FOREIGN KEY(parent) REFERENCES bench_time (id) ON DELETE CASCADE
);
CREATE TABLE bench_stretch (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	rule TEXT NOT NULL, 
	since TEXT NOT NULL, 
	start TEXT NOT NULL, 
	"end" TEXT NOT NULL, 
	people INTEGER NOT NULL, 
	CONSTRAINT pk_bench_stretch PRIMARY KEY (id), 
	CONSTRAINT fk_bench_stretch_parent FOREIGN KEY(parent) REFERENCES bench_time (id) ON DELETE CASCADE
);
INSERT INTO "bench_stretch" VALUES(124,123,0,'FREQ=WEEKLY;BYDAY=FR','2026-03-01','19:00','22:00',1);
INSERT INTO "bench_stretch" VALUES(125,123,1,'FREQ=WEEKLY;BYDAY=SA','2026-03-01','17:30','21:30',1);
CREATE TABLE bench_time (
	id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	zone TEXT NOT NULL, 
	CONSTRAINT pk_bench_time PRIMARY KEY (id)
);
INSERT INTO "bench_time" VALUES(123,0,'Europe/Warsaw');
CREATE TABLE coating (
	id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	name TEXT NOT NULL, 
	family TEXT NOT NULL, 
	finish TEXT NOT NULL, 
	swatch TEXT NOT NULL, 
	solids FLOAT NOT NULL, 
	dry_film_um FLOAT NOT NULL, 
	pot_life_minutes INTEGER, 
	least_c FLOAT, 
	most_c FLOAT, 
	most_humidity_pct FLOAT, 
	in_stock_ml FLOAT NOT NULL, 
	CONSTRAINT pk_coating PRIMARY KEY (id)
);
INSERT INTO "coating" VALUES(3,0,'lacquer primer, pale grey','solvent lacquer','matte','#b9babb',0.35,10.0,NULL,10.0,NULL,80.0,40.0);
INSERT INTO "coating" VALUES(7,1,'waterborne acrylic, skin, warm','waterborne acrylic','matte','#c98f6e',0.35,10.0,NULL,NULL,NULL,NULL,12.0);
INSERT INTO "coating" VALUES(16,2,'waterborne acrylic, ivory','waterborne acrylic','matte','#efe6cf',0.35,10.0,NULL,NULL,NULL,NULL,12.0);
INSERT INTO "coating" VALUES(25,3,'waterborne acrylic, night blue','waterborne acrylic','matte','#26324f',0.35,10.0,NULL,NULL,NULL,NULL,12.0);
INSERT INTO "coating" VALUES(34,4,'waterborne acrylic, moss green','waterborne acrylic','matte','#5a6638',0.35,10.0,NULL,NULL,NULL,NULL,12.0);
INSERT INTO "coating" VALUES(43,5,'waterborne acrylic, leather brown','waterborne acrylic','matte','#6e4a2c',0.35,10.0,NULL,NULL,NULL,NULL,12.0);
INSERT INTO "coating" VALUES(52,6,'waterborne acrylic, dark grey','waterborne acrylic','matte','#3d4043',0.35,10.0,NULL,NULL,NULL,NULL,12.0);
INSERT INTO "coating" VALUES(61,7,'waterborne acrylic, stone grey','waterborne acrylic','matte','#8b8a84',0.35,10.0,NULL,NULL,NULL,NULL,12.0);
INSERT INTO "coating" VALUES(70,8,'waterborne acrylic, lamp yellow','waterborne acrylic','matte','#f0c644',0.35,10.0,NULL,NULL,NULL,NULL,12.0);
INSERT INTO "coating" VALUES(79,9,'waterborne wash, sepia','waterborne acrylic','matte','#51402c',0.12,3.0,NULL,NULL,NULL,NULL,17.0);
INSERT INTO "coating" VALUES(88,10,'matte clear, waterborne','waterborne acrylic','matte','#dfe2e2',0.35,10.0,NULL,NULL,NULL,NULL,30.0);
INSERT INTO "coating" VALUES(97,11,'gloss clear, waterborne','waterborne acrylic','gloss','#e8eef0',0.35,10.0,NULL,NULL,NULL,NULL,30.0);
INSERT INTO "coating" VALUES(106,12,'cyanoacrylate glue','cyanoacrylate','gloss','#f4f4f4',1.0,50.0,NULL,NULL,NULL,NULL,5.0);
INSERT INTO "coating" VALUES(107,13,'water','water thinner','matte','#cfe6f2',0.35,20.0,NULL,NULL,NULL,NULL,500.0);
CREATE TABLE coating_recoat (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	opens_state TEXT, 
	opens_minutes INTEGER, 
	opens_clock TEXT, 
	closes_state TEXT, 
	closes_minutes INTEGER, 
	closes_clock TEXT, 
	preparation TEXT NOT NULL, 
	preparation_minutes INTEGER NOT NULL, 
	merges BOOLEAN NOT NULL, 
	CONSTRAINT pk_coating_recoat PRIMARY KEY (id), 
	CONSTRAINT fk_coating_recoat_parent FOREIGN KEY(parent) REFERENCES coating (id) ON DELETE CASCADE
);
INSERT INTO "coating_recoat" VALUES(5,3,0,NULL,30,'elapsed',NULL,240,'film','none',0,0);
INSERT INTO "coating_recoat" VALUES(6,3,1,'dry-through',NULL,'elapsed',NULL,NULL,NULL,'scuff',6,0);
CREATE TABLE coating_time (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	state TEXT NOT NULL, 
	minutes INTEGER NOT NULL, 
	source TEXT NOT NULL, 
	CONSTRAINT pk_coating_time PRIMARY KEY (id), 
	CONSTRAINT fk_coating_time_parent FOREIGN KEY(parent) REFERENCES coating (id) ON DELETE CASCADE
);
INSERT INTO "coating_time" VALUES(4,3,0,'print-free',90,'label');
INSERT INTO "coating_time" VALUES(8,7,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(9,7,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(10,7,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(11,7,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(12,7,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(13,7,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(14,7,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(15,7,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(17,16,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(18,16,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(19,16,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(20,16,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(21,16,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(22,16,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(23,16,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(24,16,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(26,25,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(27,25,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(28,25,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(29,25,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(30,25,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(31,25,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(32,25,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(33,25,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(35,34,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(36,34,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(37,34,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(38,34,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(39,34,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(40,34,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(41,34,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(42,34,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(44,43,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(45,43,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(46,43,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(47,43,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(48,43,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(49,43,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(50,43,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(51,43,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(53,52,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(54,52,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(55,52,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(56,52,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(57,52,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(58,52,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(59,52,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(60,52,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(62,61,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(63,61,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(64,61,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(65,61,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(66,61,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(67,61,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(68,61,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(69,61,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(71,70,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(72,70,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(73,70,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(74,70,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(75,70,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(76,70,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(77,70,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(78,70,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(80,79,0,'set-to-touch',10,'label (invented)');
INSERT INTO "coating_time" VALUES(81,79,1,'dust-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(82,79,2,'tack-free',20,'label (invented)');
INSERT INTO "coating_time" VALUES(83,79,3,'dry-to-handle',30,'label (invented)');
INSERT INTO "coating_time" VALUES(84,79,4,'dry-to-recoat',40,'label (invented)');
INSERT INTO "coating_time" VALUES(85,79,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(86,79,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(87,79,7,'dry-through',75,'label (invented)');
INSERT INTO "coating_time" VALUES(89,88,0,'set-to-touch',10,'label (invented)');
INSERT INTO "coating_time" VALUES(90,88,1,'dust-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(91,88,2,'tack-free',20,'label (invented)');
INSERT INTO "coating_time" VALUES(92,88,3,'dry-to-handle',45,'label (invented)');
INSERT INTO "coating_time" VALUES(93,88,4,'dry-to-recoat',45,'label (invented)');
INSERT INTO "coating_time" VALUES(94,88,5,'print-free',240,'label (invented)');
INSERT INTO "coating_time" VALUES(95,88,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(96,88,7,'dry-through',480,'label (invented)');
INSERT INTO "coating_time" VALUES(98,97,0,'set-to-touch',8,'label (invented)');
INSERT INTO "coating_time" VALUES(99,97,1,'dust-free',12,'label (invented)');
INSERT INTO "coating_time" VALUES(100,97,2,'tack-free',15,'label (invented)');
INSERT INTO "coating_time" VALUES(101,97,3,'dry-to-handle',25,'label (invented)');
INSERT INTO "coating_time" VALUES(102,97,4,'dry-to-recoat',30,'label (invented)');
INSERT INTO "coating_time" VALUES(103,97,5,'print-free',360,'label (invented)');
INSERT INTO "coating_time" VALUES(104,97,6,'solvent-safe',1080,'label (invented)');
INSERT INTO "coating_time" VALUES(105,97,7,'dry-through',75,'label (invented)');
CREATE TABLE gate (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	"after" TEXT NOT NULL, 
	closing TEXT NOT NULL, 
	CONSTRAINT pk_gate PRIMARY KEY (id), 
	CONSTRAINT fk_gate_parent FOREIGN KEY(parent) REFERENCES step (id) ON DELETE CASCADE
);
CREATE TABLE gate_window (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	opens_state TEXT, 
	opens_minutes INTEGER, 
	opens_clock TEXT, 
	closes_state TEXT, 
	closes_minutes INTEGER, 
	closes_clock TEXT, 
	preparation TEXT NOT NULL, 
	preparation_minutes INTEGER NOT NULL, 
	merges BOOLEAN NOT NULL, 
	CONSTRAINT pk_gate_window PRIMARY KEY (id), 
	CONSTRAINT fk_gate_window_parent FOREIGN KEY(parent) REFERENCES gate (id) ON DELETE CASCADE
);
CREATE TABLE gear (
	id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	CONSTRAINT pk_gear PRIMARY KEY (id)
);
INSERT INTO "gear" VALUES(127,0);
CREATE TABLE journal (
	id INTEGER NOT NULL, 
	at TEXT NOT NULL, 
	name TEXT NOT NULL, 
	kind TEXT NOT NULL, 
	target INTEGER, 
	changes BLOB NOT NULL, 
	CONSTRAINT pk_journal PRIMARY KEY (id), 
	CONSTRAINT fk_journal_target FOREIGN KEY(target) REFERENCES journal (id)
);
INSERT INTO "journal" VALUES(1,'2026-11-25T11:11:38+00:00','new book','created',NULL,X'789CABAE0500017500F9');
INSERT INTO "journal" VALUES(2,'2026-11-25T11:11:38+00:00','note','edit',NULL,X'789CDD90410AC2301045AF32646DB12A2878066F205D847648A269129249AB94DEDD2415144470ED2EFFCFE7E7CD4CCC797BC196D6276B1034EF9D5642127A7684F3C40CEF31BDD8C774058CB8174879BAADB7FBAADE55F521FB23E64CF23749F096D4902BC8474CDA291396EADE76A84BF7AB164645123838AB31570542972342F310AA209529766B79EE3751EBA4AC5918769B174348706F1134DD53CC4D92C652D9EA8A8E80A4B75148C001FD1DA2139E77E597025860BF2236F30AFEFD48B79F6FD1CC0FF0A7B736');
INSERT INTO "journal" VALUES(3,'2026-11-25T11:11:38+00:00','note','undo',2,X'789CDD90410AC2301045AF32646DB12A2878066F205D847648A269129249AB94DEDD2415144470ED2E7FE6F3789989396F2FD8D2FA640D82E6BDD34A4842CF8E709E98E13DA617FBD8AE8011F702296FB7F5765FD5BBAA3EE4F988B993E69B14784B6AC808F2115376CA8405DDDB0E7561BFB0302A92C0C1598D1915085DAE08CD43A88254A68C5BCB33DF44AD53B26671D86D5E0E21C9BD55D074CF3037291A4BE557B75C2D1EC5E9AB4933AFE0DF6F71454740D2DB2824E080FE0ED109CF3BFCF948CDFC00B65CB736');
CREATE TABLE location (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	name TEXT NOT NULL, 
	drying_places INTEGER NOT NULL, 
	CONSTRAINT pk_location PRIMARY KEY (id), 
	CONSTRAINT fk_location_parent FOREIGN KEY(parent) REFERENCES room (id) ON DELETE CASCADE
);
INSERT INTO "location" VALUES(121,120,0,'window sill',3);
CREATE TABLE location_weekend (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	at TEXT NOT NULL, 
	temperature_c FLOAT NOT NULL, 
	humidity_pct FLOAT NOT NULL, 
	CONSTRAINT pk_location_weekend PRIMARY KEY (id), 
	CONSTRAINT fk_location_weekend_parent FOREIGN KEY(parent) REFERENCES location (id) ON DELETE CASCADE
);
CREATE TABLE location_workday (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	at TEXT NOT NULL, 
	temperature_c FLOAT NOT NULL, 
	humidity_pct FLOAT NOT NULL, 
	CONSTRAINT pk_location_workday PRIMARY KEY (id), 
	CONSTRAINT fk_location_workday_parent FOREIGN KEY(parent) REFERENCES location (id) ON DELETE CASCADE
);
INSERT INTO "location_workday" VALUES(122,121,0,'00:00',21.0,45.0);
CREATE TABLE meta (
	name TEXT NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_meta PRIMARY KEY (name)
);
INSERT INTO "meta" VALUES('last_id','210');
CREATE TABLE mix (
	id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	name TEXT NOT NULL, 
	life_minutes INTEGER NOT NULL, 
	swatch TEXT, 
	CONSTRAINT pk_mix PRIMARY KEY (id)
);
INSERT INTO "mix" VALUES(108,0,'sepia wash, 2 : 3',480,'#75644d');
INSERT INTO "mix" VALUES(111,1,'night blue highlight, 2 : 3',90,'#767a84');
INSERT INTO "mix" VALUES(114,2,'skin highlight, 2 : 3',90,'#d8b295');
INSERT INTO "mix" VALUES(117,3,'leather tone, 1 : 1',120,'#564538');
CREATE TABLE mix_portion (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	coating TEXT NOT NULL, 
	parts FLOAT NOT NULL, 
	CONSTRAINT pk_mix_portion PRIMARY KEY (id), 
	CONSTRAINT fk_mix_portion_parent FOREIGN KEY(parent) REFERENCES mix (id) ON DELETE CASCADE
);
INSERT INTO "mix_portion" VALUES(109,108,0,'waterborne wash, sepia',2.0);
INSERT INTO "mix_portion" VALUES(110,108,1,'water',3.0);
INSERT INTO "mix_portion" VALUES(112,111,0,'waterborne acrylic, ivory',2.0);
INSERT INTO "mix_portion" VALUES(113,111,1,'waterborne acrylic, night blue',3.0);
INSERT INTO "mix_portion" VALUES(115,114,0,'waterborne acrylic, ivory',2.0);
INSERT INTO "mix_portion" VALUES(116,114,1,'waterborne acrylic, skin, warm',3.0);
INSERT INTO "mix_portion" VALUES(118,117,0,'waterborne acrylic, leather brown',1.0);
INSERT INTO "mix_portion" VALUES(119,117,1,'waterborne acrylic, dark grey',1.0);
CREATE TABLE model (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	name TEXT NOT NULL, 
	scale TEXT NOT NULL, 
	CONSTRAINT pk_model PRIMARY KEY (id), 
	CONSTRAINT fk_model_parent FOREIGN KEY(parent) REFERENCES project (id) ON DELETE CASCADE
);
INSERT INTO "model" VALUES(130,1,0,'Lamplighter with a pole','1:35');
CREATE TABLE part (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	name TEXT NOT NULL, 
	holder TEXT NOT NULL, 
	stands INTEGER NOT NULL, 
	material TEXT NOT NULL, 
	stressed BOOLEAN NOT NULL, 
	CONSTRAINT pk_part PRIMARY KEY (id), 
	CONSTRAINT fk_part_parent FOREIGN KEY(parent) REFERENCES model (id) ON DELETE CASCADE
);
INSERT INTO "part" VALUES(131,130,0,'figure','cork with a pin',1,'hard styrene',0);
INSERT INTO "part" VALUES(139,130,1,'plinth','bottle cap',1,'hard styrene',0);
CREATE TABLE place (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	name TEXT NOT NULL, 
	side TEXT NOT NULL, 
	area_cm2 FLOAT NOT NULL, 
	CONSTRAINT pk_place PRIMARY KEY (id), 
	CONSTRAINT fk_place_parent FOREIGN KEY(parent) REFERENCES part (id) ON DELETE CASCADE
);
INSERT INTO "place" VALUES(132,131,0,'face and hands','top',3.0);
INSERT INTO "place" VALUES(133,131,1,'coat','top',14.0);
INSERT INTO "place" VALUES(134,131,2,'trousers','top',6.0);
INSERT INTO "place" VALUES(135,131,3,'boots and satchel','top',5.0);
INSERT INTO "place" VALUES(136,131,4,'pole and lantern','top',4.0);
INSERT INTO "place" VALUES(137,131,5,'lantern glass','top',0.5);
INSERT INTO "place" VALUES(138,131,6,'soles','under',0.5);
INSERT INTO "place" VALUES(140,139,0,'cobbles','top',12.0);
INSERT INTO "place" VALUES(141,139,1,'rim','top',10.0);
INSERT INTO "place" VALUES(142,139,2,'standing spots','top',0.5);
CREATE TABLE project (
	id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	name TEXT NOT NULL, 
	target TEXT, 
	weight INTEGER NOT NULL, 
	active BOOLEAN NOT NULL, 
	note TEXT NOT NULL, 
	CONSTRAINT pk_project PRIMARY KEY (id)
);
INSERT INTO "project" VALUES(1,0,'Lone lamplighter','2026-03-07',1,1,'kept through every upgrade');
CREATE TABLE project_log (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	model TEXT NOT NULL, 
	step TEXT NOT NULL, 
	coat INTEGER NOT NULL, 
	start TEXT NOT NULL, 
	"end" TEXT, 
	CONSTRAINT pk_project_log PRIMARY KEY (id), 
	CONSTRAINT fk_project_log_parent FOREIGN KEY(parent) REFERENCES project (id) ON DELETE CASCADE
);
INSERT INTO "project_log" VALUES(129,1,0,'Lamplighter with a pole','prime',1,'2031-03-04T19:00:00+01:00','2031-03-04T19:12:00+01:00');
CREATE TABLE project_pin (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	model TEXT NOT NULL, 
	step TEXT NOT NULL, 
	coat INTEGER, 
	"on" TEXT, 
	start TEXT, 
	"end" TEXT, 
	CONSTRAINT pk_project_pin PRIMARY KEY (id), 
	CONSTRAINT fk_project_pin_parent FOREIGN KEY(parent) REFERENCES project (id) ON DELETE CASCADE
);
INSERT INTO "project_pin" VALUES(210,1,0,'Lamplighter with a pole','glass-shine',NULL,'2031-03-07',NULL,NULL);
CREATE TABLE reading (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	at TEXT NOT NULL, 
	temperature_c FLOAT NOT NULL, 
	humidity_pct FLOAT NOT NULL, 
	location TEXT NOT NULL, 
	CONSTRAINT pk_reading PRIMARY KEY (id), 
	CONSTRAINT fk_reading_parent FOREIGN KEY(parent) REFERENCES room (id) ON DELETE CASCADE
);
CREATE TABLE room (
	id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	volume_m3 FLOAT NOT NULL, 
	CONSTRAINT pk_room PRIMARY KEY (id)
);
INSERT INTO "room" VALUES(120,0,40.0);
CREATE TABLE step (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	step_id TEXT NOT NULL, 
	stage TEXT NOT NULL, 
	title TEXT NOT NULL, 
	tool TEXT NOT NULL, 
	minutes_fixed INTEGER NOT NULL, 
	minutes_per_part INTEGER NOT NULL, 
	role TEXT, 
	split_least INTEGER, 
	helper BOOLEAN NOT NULL, 
	dries_in TEXT NOT NULL, 
	scraped BOOLEAN NOT NULL, 
	stands INTEGER, 
	CONSTRAINT pk_step PRIMARY KEY (id), 
	CONSTRAINT fk_step_parent FOREIGN KEY(parent) REFERENCES model (id) ON DELETE CASCADE
);
INSERT INTO "step" VALUES(143,130,0,'prime','prime','Prime figure and plinth in thin passes from all sides','airbrush',2,3,NULL,NULL,0,'',0,NULL);
INSERT INTO "step" VALUES(153,130,1,'skin','base','Face and hands','brush',8,0,NULL,NULL,0,'',0,NULL);
INSERT INTO "step" VALUES(156,130,2,'coat','base','The long coat, night blue','brush',10,0,NULL,NULL,0,'',0,NULL);
INSERT INTO "step" VALUES(159,130,3,'trousers','base','Trousers, moss green','brush',7,0,NULL,NULL,0,'',0,NULL);
INSERT INTO "step" VALUES(162,130,4,'leather','detail','Boots and satchel','brush',8,0,NULL,NULL,0,'',0,NULL);
INSERT INTO "step" VALUES(165,130,5,'pole','detail','Lamp pole and lantern frame, dark grey','brush',6,0,NULL,NULL,0,'',0,NULL);
INSERT INTO "step" VALUES(168,130,6,'cobbles','base','Stone grey on the cobbles','brush',6,0,NULL,NULL,0,'',0,NULL);
INSERT INTO "step" VALUES(171,130,7,'rim','base','Dark grey round the rim of the plinth','brush',4,0,NULL,NULL,0,'',0,NULL);
INSERT INTO "step" VALUES(174,130,8,'sepia','wash','Sepia wash into folds, fingers and between the cobbles','brush',4,5,NULL,NULL,0,'',0,NULL);
INSERT INTO "step" VALUES(181,130,9,'coat-light','highlight','Upper folds of the coat, two parts ivory to three of blue','brush',14,0,NULL,NULL,0,'',0,NULL);
INSERT INTO "step" VALUES(184,130,10,'skin-light','highlight','Nose, cheeks and knuckles','brush',10,0,NULL,NULL,0,'',0,NULL);
INSERT INTO "step" VALUES(187,130,11,'dry-brush','dry-brush','Dry-brush ivory over cobbles','brush',5,0,NULL,NULL,0,'',0,NULL);
INSERT INTO "step" VALUES(190,130,12,'glass','detail','Lamp yellow in the lantern','brush',4,0,NULL,NULL,0,'',0,NULL);
INSERT INTO "step" VALUES(193,130,13,'join','join','Glue the figure on the plinth','hand',5,0,NULL,NULL,0,'',0,NULL);
INSERT INTO "step" VALUES(197,130,14,'matte','matte','Matte clear over everything','airbrush',2,3,'final',NULL,0,'',0,NULL);
INSERT INTO "step" VALUES(206,130,15,'glass-shine','varnish','A drop of gloss on the lantern glass','brush',3,0,NULL,NULL,0,'',0,NULL);
CREATE TABLE step_after (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_step_after PRIMARY KEY (id), 
	CONSTRAINT fk_step_after_parent FOREIGN KEY(parent) REFERENCES step (id) ON DELETE CASCADE
);
CREATE TABLE step_touches (
	id INTEGER NOT NULL, 
	parent INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT pk_step_touches PRIMARY KEY (id), 
	CONSTRAINT fk_step_touches_parent FOREIGN KEY(parent) REFERENCES step (id) ON DELETE CASCADE
);
CREATE INDEX ix_airbrush_parent ON airbrush (parent);
CREATE INDEX ix_bench_daylight_parent ON bench_daylight (parent);
CREATE INDEX ix_bench_extra_parent ON bench_extra (parent);
CREATE INDEX ix_bench_quiet_parent ON bench_quiet (parent);
CREATE INDEX ix_bench_skipped_parent ON bench_skipped (parent);
CREATE INDEX ix_bench_stretch_parent ON bench_stretch (parent);
CREATE INDEX ix_coating_recoat_parent ON coating_recoat (parent);
CREATE INDEX ix_coating_time_parent ON coating_time (parent);
CREATE INDEX ix_location_parent ON location (parent);
CREATE INDEX ix_mix_portion_parent ON mix_portion (parent);
CREATE INDEX ix_model_parent ON model (parent);
CREATE INDEX ix_project_log_parent ON project_log (parent);
CREATE INDEX ix_project_pin_parent ON project_pin (parent);
CREATE INDEX ix_reading_parent ON reading (parent);
CREATE INDEX ix_location_weekend_parent ON location_weekend (parent);
CREATE INDEX ix_location_workday_parent ON location_workday (parent);
CREATE INDEX ix_part_parent ON part (parent);
CREATE INDEX ix_step_parent ON step (parent);
CREATE INDEX ix_application_parent ON application (parent);
CREATE INDEX ix_gate_parent ON gate (parent);
CREATE INDEX ix_place_parent ON place (parent);
CREATE INDEX ix_step_after_parent ON step_after (parent);
CREATE INDEX ix_step_touches_parent ON step_touches (parent);
CREATE INDEX ix_application_place_parent ON application_place (parent);
CREATE INDEX ix_gate_window_parent ON gate_window (parent);
COMMIT;
